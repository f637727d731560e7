import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitKey } from '../../src/analyze/homographs/word-key.ts';
import { tokenize } from '../../src/analyze/text/tokenize.ts';

const seeded = { seed: 20_261_125, numRuns: 1500 };
const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60, size: 'max' }),
  fc.string({ unit: fc.constantFrom(..."aBs' ’‘“”.,\n-\u00AD\u200B´1@#/ é"), maxLength: 60, size: 'max' }),
);

describe('laws of the tokeniser', () => {
  test('spans are in order, do not overlap, and are neither empty nor outside the text', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        let end = 0;
        for (const token of tokenize(text)) {
          expect(token.start).toBeGreaterThanOrEqual(end);
          expect(token.end).toBeGreaterThan(token.start);
          end = token.end;
        }
        expect(end).toBeLessThanOrEqual(text.length);
      }),
      seeded,
    );
  });

  test('two paragraphs are split in the same way as each paragraph alone', () => {
    fc.assert(
      fc.property(anyText, anyText, (one, other) => {
        const shift = one.length + 2;
        const moved = tokenize(other).map((token) => ({
          ...token,
          start: token.start + shift,
          end: token.end + shift,
        }));
        expect(tokenize(`${one}\n\n${other}`)).toEqual([...tokenize(one), ...moved]);
      }),
      seeded,
    );
  });

  test('a key has no zero-width characters, only straight apostrophes, and is tokenised as itself', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        for (const { kind, key } of tokenize(text)) {
          expect(key).not.toMatch(/[\u00AD\u200B’´]/);
          if (kind === 'word' && !key.endsWith("'"))
            expect(
              tokenize(splitKey(key).word).map((token) => token.key.toLowerCase().replace('^', '')),
            ).toEqual([splitKey(key).word.toLowerCase()]);
        }
      }),
      seeded,
    );
  });
});
