import { describe, expect, test } from 'vitest';
import { fitsAsIs, fitsPlace, placeOf, takesFollower } from './fit-place.ts';
import type { Candidate, SwapTable } from './open-swaps.ts';
import type { PartOfSpeech } from './types.ts';

/** The share of uses of each word as noun, verb, adjective and adverb. */
const shares = new Map([
  ['men', [1, 0, 0, 0]],
  ['old', [0, 0, 1, 0]],
  ['took', [0, 1, 0, 0]],
  ['sail', [0.6, 0.4, 0, 0]],
  ['ran', [0, 1, 0, 0]],
]);
const table = {
  isLemma: () => false,
  irregularOf: () => [],
  get: () => undefined,
  shares: (word: string) => shares.get(word) ?? null,
  follows: () => null,
} as unknown as SwapTable;

/** Returns the place of the word in brackets. */
function place(marked: string) {
  const words = marked.split(' ');
  const at = words.findIndex((word) => word.startsWith('['));
  const pieces = words.map((word) => ({ lower: word.replace(/[[\]]/g, '') }));
  return placeOf(pieces as never, at, table);
}

describe('a noun', () => {
  test.each([
    ['the [boat]', false],
    ['the old [boat]', false],
    ['the men took [boat]', true],
    ['3 old [boat]', false],
    ['in [boat]', true],
    ['gull [boat]', true],
    ['[boat] sank', true],
  ])('in brackets in “%s” lacks the determiner that a countable noun needs: %s', (marked, isBare) => {
    expect(place(marked).isBare).toBe(isBare);
  });
});

describe('a word', () => {
  test.each([
    ['[big] men', true],
    ['[big] sail', true],
    ['[big] ran', false],
    ['the [big] ran', true],
    ['[big] the', false],
    ['[big] .', false],
  ])('in brackets in “%s” is before a noun: %s', (marked, isBeforeNoun) => {
    expect(place(marked).isBeforeNoun).toBe(isBeforeNoun);
  });

  test('has up to six words ahead of it, as far as the next punctuation mark', () => {
    expect(place('the [big] men ran , the').ahead).toEqual(['men', 'ran']);
    expect(place('[big] a b c d e f g').ahead).toEqual(['a', 'b', 'c', 'd', 'e', 'f']);
    expect(place('the old [big] men')).toMatchObject({ before: 'old', before2: 'the', after: 'men' });
  });
});

describe('a swap', () => {
  const allows = (rule: typeof fitsPlace, marked: string, part: PartOfSpeech, lemma: string): boolean => {
    const word = /\[(.*)\]/.exec(marked)![1]!;
    const candidate = { lemma, object: null } as Candidate;
    return rule({ lemma: word, part, form: 'base' }, candidate, lemma, place(marked));
  };

  test.each([
    ['a highly [unusual] sail', 'a', 'odd', false],
    ['a rather [unusual] sail', 'a', 'odd', true],
    ['[many] men ran', 'a', 'lots of', true],
    ['[many] ran', 'a', 'lots of', false],
    ['they [receive] the men', 'v', 'get', true],
    ['they [receive] them', 'v', 'get', false],
    ['they [reduce] the sail', 'v', 'cut', true],
    ['they [reduce] it', 'v', 'cut', false],
    ['they [descend] .', 'v', 'go down', true],
    ['they [descend] into it', 'v', 'go down', false],
    ['it ran [rocky] .', 'a', 'full of sail', true],
    ['the " [rocky] " men', 'a', 'full of sail', false],
  ] as const)('for the bracketed word in “%s”, read as %s, can be %s: %s', (marked, part, lemma, can) => {
    expect(allows(fitsPlace, marked, part, lemma)).toBe(can);
  });

  test('is unsure for a verb with a reflexive pronoun after it', () => {
    expect(allows(takesFollower, 'they [gather] old sail', 'v', 'get')).toBe(true);
    expect(allows(takesFollower, 'they [gather] themselves', 'v', 'get')).toBe(false);
  });

  test('is unsure for a participle before its noun', () => {
    const participle = (marked: string): boolean =>
      takesFollower(
        { lemma: 'manufacture', part: 'v', form: 'participle' },
        { lemma: 'make', object: null } as Candidate,
        'made',
        place(marked),
      );
    expect(participle('they are [manufactured] .')).toBe(true);
    expect(participle('they are [manufactured] men')).toBe(false);
    expect(participle('a rather [manufactured] men')).toBe(false);
  });

  test('of small words fits only beside certain words', () => {
    expect(fitsAsIs('no one', place('[nobody] ran'))).toBe(true);
    expect(fitsAsIs('no one', place('a [nobody] ran'))).toBe(false);
  });
});
