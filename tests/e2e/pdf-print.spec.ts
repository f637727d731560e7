import { diffArrays } from 'diff';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { readPdf } from '../../src/cli/read-pdf.ts';
import { wordsOf } from '../desk/pdf-layouts.ts';
import { loadAnalyzer } from '../load-analyzer.ts';
import { onlyIn, startPlainBrowser } from './browser.ts';
import { printedLayouts } from './pdf-prints.ts';

/** The smallest share of a file's words that must be read in the right order. */
const MOST = 0.995;

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await startPlainBrowser();
  page = await browser.newPage();
});

afterAll(() => browser.close());

describe('a PDF printed by Chromium', () => {
  for (const { name, words, print } of printedLayouts)
    onlyIn('chromium', 'debugging protocol')(name, async () => {
      const { text } = await readPdf(await print(page), loadAnalyzer());
      const found = wordsOf(text);
      const parts = diffArrays([...words], found);
      const right = parts.reduce(
        (sum, { added, removed, value }) => sum + (added || removed ? 0 : value.length),
        0,
      );
      const odd = parts.filter(({ added, removed }) => added || removed);
      const says = odd
        .slice(0, 8)
        .map(({ added, value }) => `${added ? '+' : '-'} ${value.slice(0, 8).join(' ')}`);
      expect(right / Math.max(words.length, found.length), says.join('\n')).toBeGreaterThanOrEqual(MOST);
    });
});
