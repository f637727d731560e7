import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { tokenize } from '../../src/analyze/index.ts';
import { startPlainBrowser } from './browser.ts';
import { bundleReader } from './bundle-reader.ts';
import { randomTrees, type Tree, writeTree } from './random-tree.ts';

/**
 * Outside source: innerText (HTML Standard, 3.2.7), the browser's own account of the drawn text. innerText does not
 * include shadow roots. For the comparison, the same parts are therefore drawn without shadow roots, and text that the
 * overlay does not read is left out.
 */
let page: Page;
beforeAll(async () => {
  const browser = await startPlainBrowser();
  page = await browser.newPage();
  await page.setContent('<!doctype html><body><main></main>');
  await page.evaluate(await bundleReader());
});
afterAll(() => page?.context().browser()?.close());

const seeded = {
  seed: 20_261_125,
  numRuns: 400,
  endOnFailure: false,
};
/**
 * The browser removes a line break of the source beside a `<wbr>`. The overlay reads the line break as a space, like
 * any other line break of the source.
 */
const BREAK_AT_WBR = /\n\s*(?:<[^>]*>)*<wbr>|<wbr>(?:<[^>]*>)*\s*\n/;
/**
 * In the drawn text, a `<br>` cannot be told from the end of a paragraph. A `<br>` can divide a word, but the end of a
 * paragraph cannot.
 */
const BROKEN_WORD = /\p{L}-\s*\n\s*\p{Ll}/u;
const written = (trees: readonly Tree[]) => trees.map(writeTree).join('');

test('on any page, the letters read are the letters drawn, in the same order', async () => {
  await fc.assert(
    fc.asyncProperty(randomTrees('any'), async (trees) => {
      const { letters, drawn } = await page.evaluate(readInPage, trees);
      expect(letters, written(trees)).toBe(lettersOf(drawn));
    }),
    seeded,
  );
}, 120_000);

test('on plain pages, where innerText splits words as the overlay does, the words read are the words drawn', async () => {
  let words = 0;
  await fc.assert(
    fc.asyncProperty(randomTrees('plain'), async (trees) => {
      fc.pre(!BREAK_AT_WBR.test(written(trees)));
      const { keys, drawn } = await page.evaluate(readInPage, trees);
      fc.pre(!BROKEN_WORD.test(drawn));
      const expected = tokenize(drawn).flatMap(({ kind, key }) => (kind === 'word' ? [key] : []));
      expect(keys, written(trees)).toEqual(expected);
      words += keys.length;
    }),
    seeded,
  );
  expect(words).toBeGreaterThan(1000);
}, 120_000);

function lettersOf(text: string): string {
  return text.replace(/[^\p{L}]/gu, '').toLowerCase();
}

/** Reads the trees as the overlay does. Then draws the trees again, to get the browser's own account of the drawn text. */
function readInPage(trees: readonly Tree[]): { letters: string; keys: string[]; drawn: string } {
  const main = document.querySelector('main')!;
  main.replaceChildren();
  wordreachReader.growTrees(main, trees);
  const read = wordreachReader.readWords(main);
  main.replaceChildren();
  wordreachReader.growTrees(main, trees, true);
  // biome-ignore lint/performance/useDomNodeTextContent: the question is about drawn text
  return { ...read, drawn: main.innerText };
}
