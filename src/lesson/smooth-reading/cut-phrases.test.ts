import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutPhrases } from './cut-phrases.ts';

test('a sentence that begins with “and” is not cut there', () => {
  expect(cutPhrases('And gulls flew home.')).toEqual(['And gulls flew home.']);
});

test('the phrases of any text join to the whole text', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(cutPhrases(text).join(' ')).toBe(text.split(/\s+/).filter(Boolean).join(' '));
    }),
    { seed: 20261125, numRuns: 200 },
  );
  expect(cutPhrases('')).toEqual([]);
});
