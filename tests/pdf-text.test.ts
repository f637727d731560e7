import { diffArrays } from 'diff';
import { describe, expect, test } from 'vitest';
import { readPdf } from '../src/cli/read-pdf.ts';
import { pdfLayouts, wordsOf } from './desk/pdf-layouts.ts';
import { loadAnalyzer } from './load-analyzer.ts';

/** The smallest share of the words of a file that must be read in their order. */
const MOST = 0.995;

describe('a PDF made by pdf-lib', () => {
  test.each(pdfLayouts.map((layout) => [layout.name, layout] as const))(
    'has its words read in the right order: %s',
    async (_name, layout) => {
      const { text } = await readPdf(await layout.make(), loadAnalyzer());
      const found = wordsOf(text);
      const same = diffArrays([...layout.words], found).filter(({ added, removed }) => !added && !removed);
      const right = same.reduce((sum, { value }) => sum + value.length, 0);
      const odd = diffArrays([...layout.words], found).filter(({ added, removed }) => added || removed);
      const says = odd
        .slice(0, 8)
        .map(({ added, value }) => `${added ? '+' : '-'} ${value.slice(0, 8).join(' ')}`);
      expect(right / Math.max(layout.words.length, found.length), says.join('\n')).toBeGreaterThanOrEqual(
        MOST,
      );
    },
  );
});
