import { expect, test } from 'vitest';
import type { LessonInput } from '../lesson-input.ts';
import { findCandidates } from './find-candidates.ts';

/**
 * Returns words in the order of teaching, the best first, for a group without a passage. Each word is given with its
 * rank and part of speech.
 */
function order(words: readonly (readonly [word: string, rank: number, parts: string])[]): string[] {
  const known = {
    words: words.map(([word, rank, parts]) => ({
      ...{
        word,
        rank,
        parts,
        meaning: 'a thing',
        standing: 'reads',
        homograph: false,
        reading: { requires: [] },
      },
    })),
  };
  return findCandidates({ known, passage: null } as unknown as LessonInput).map(({ word }) => word.word);
}

test('the nearer a word is to the rank of pier and lantern, the earlier it comes', () => {
  expect(
    order([
      ['rope', 2000, 'n'],
      ['pier', 4600, 'n'],
      ['gherkin', 30_000, 'n'],
      ['lantern', 6000, 'n'],
    ]),
  ).toEqual(['pier', 'lantern', 'rope', 'gherkin']);
});

test('a noun or verb comes before an equally useful adjective, but not before a much more useful one', () => {
  const misty = ['misty', 4500, 'a'] as const;
  expect(order([misty, ['pier', 6000, 'n']])).toEqual(['pier', 'misty']);
  expect(order([misty, ['mend', 6000, 'v']])).toEqual(['mend', 'misty']);
  expect(order([misty, ['vestibule', 9000, 'n']])).toEqual(['misty', 'vestibule']);
});

test('words that every child knows are left out', () => {
  expect(
    order([
      ['go', 40, 'v'],
      ['pier', 4600, 'n'],
    ]),
  ).toEqual(['pier']);
});
