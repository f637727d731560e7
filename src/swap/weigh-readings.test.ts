import { expect, test } from 'vitest';
import type { SwapTable } from './open-swaps.ts';
import { sharesOfForm } from './weigh-readings.ts';

/** The share of uses of each word as noun, verb, adjective and adverb. */
const shares = new Map([
  ['town', [1, 0, 0, 0]],
  ['net', [0.8, 0.2, 0, 0]],
  ['paint', [0.8, 0.2, 0, 0]],
  ['painted', [0, 0, 1, 0]],
  ['walk', [0.1, 0.9, 0, 0]],
]);
const lemmas = new Set(['town/n', 'net/n', 'net/v', 'paint/n', 'paint/v', 'walk/v']);
const table = {
  isLemma: (word: string, part: string) => lemmas.has(`${word}/${part}`),
  irregularOf: () => [],
  get: () => undefined,
  shares: (word: string) => shares.get(word) ?? null,
} as unknown as SwapTable;
const sharesOf = (word: string): number[] | undefined =>
  sharesOfForm(word, table)?.map((share) => Math.round(100 * share));

test.each([
  ['a form of a noun alone is a noun', 'towns', [100, 0, 0, 0]],
  ['a form of a verb alone is a verb', 'walked', [0, 100, 0, 0]],
  ['a form in -s of a noun and a verb is either', 'nets', [62, 38, 0, 0]],
  ['a form in -ed that is an adjective too is either', 'painted', [0, 33, 67, 0]],
  ['a word in no form has its own shares', 'paint', [80, 20, 0, 0]],
])('%s (%s)', (_what, word, expected) => expect(sharesOf(word)).toEqual(expected));

test('a word missing from the table has no shares', () => {
  expect(sharesOf('gull')).toBeUndefined();
});
