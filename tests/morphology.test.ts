import { describe, expect, test } from 'vitest';
import { readHandMade } from '../src/data/lexicon/read-hand-made.ts';
import type { Derivation } from '../src/data/morphology/derivation.ts';
import { findDerivations } from '../src/data/morphology/find-derivations.ts';
import { readCorrections } from '../src/data/morphology/read-corrections.ts';
import { readCmudict } from '../src/data/read-cmudict.ts';
import { readCapitalised, readFrequency } from '../src/data/read-frequency.ts';
import { readWordnet } from '../src/data/read-wordnet.ts';
import { measureMorphology, type Share } from './accuracy/measure-morphology.ts';

describe('the parts of words, against outside forms and hand-checked lists', () => {
  const figures = measureMorphology();
  const atLeast = ({ right, of, wrong }: Share, bar: number): void => {
    expect(of).toBeGreaterThan(300);
    expect(right / of, wrong.join('\n')).toBeGreaterThanOrEqual(bar);
  };

  // Source of the forms: npm compromise over the base forms of WordNet 3.1.
  test('inflected forms are found: recall', () => atLeast(figures.inflectionRecall, 0.99));
  test('inflected forms are right: precision', () => atLeast(figures.inflectionPrecision, 0.99));

  // Source of the lists: drawn at random from the commonest 20,000 words and read by hand.
  test('derivations, prefixes and compounds are found: recall', () =>
    atLeast(figures.derivationRecall, 0.95));
  test('derivations, prefixes and compounds are right: precision', () =>
    atLeast(figures.derivationPrecision, 0.97));
  test('words that only look like derived words are left whole', () => atLeast(figures.falseFriends, 1));
});

describe('derivations followed step by step', () => {
  // Corrections may name words that pronunciations.tsv adds.
  const words = new Map([...readCmudict(), ...readHandMade().pronunciations]);
  const facts = { ...readWordnet(), rank: readFrequency(), capitalised: readCapitalised() };
  const found = findDerivations(words, facts, readCorrections());

  /** Splits a word as in `care + less + ness`. Looks up each base again until a base is whole. */
  const takeApart = (word: string): string => {
    const step = found.get(word);
    if (!step) return word;
    return step.kind === 'prefix'
      ? `${step.affix} + ${takeApart(step.base)}`
      : `${takeApart(step.base)} + ${step.affix}`;
  };

  test.each([
    ['carelessness', 'care + less + ness'],
    ['uncontrollable', 'un + control + able'],
    ['happily', 'happy + ly'],
    ['luckiest', 'luck + y + est'],
    ['logically', 'logic + al + ly'],
    ['unexpectedly', 'un + expect + ed + ly'],
    ['firefighters', 'fire + fighter + s'],
    ['buses', 'bus + es'],
    ['horses', 'horse + s'],
    ['icy', 'ice + y'],
    ['cupcake', 'cup + cake'],
    ['misunderstand', 'mis + under + stand'],
  ])('%s = %s', (word, parts) => {
    expect(takeApart(word)).toBe(parts);
  });

  test('every base and every second half is a word, and no chain of bases runs in a circle', () => {
    for (const [word, { base, affix, kind }] of found) {
      expect(words.has(base), `${word}: ${base}`).toBe(true);
      if (kind === 'compound') expect(words.has(affix), `${word}: ${affix}`).toBe(true);
      expect(() => takeApart(word), word).not.toThrow();
    }
  });

  test('the pronunciations that a derivation names exist', () => {
    for (const [word, { base, wordReading, baseReading }] of found) {
      expect(words.get(word)![wordReading], word).toBeDefined();
      if (baseReading !== -1) expect(words.get(base)![baseReading], word).toBeDefined();
    }
  });

  test('the order of the dictionary does not change the result', () => {
    const some = [...words].filter(([word]) => /^(care|luck|un|fire)/.test(word));
    const again: Map<string, Derivation> = findDerivations(new Map(some.reverse()), facts, readCorrections());
    expect(again.size).toBeGreaterThan(200);
    expect([...findDerivations(new Map(some), facts, readCorrections())].sort()).toEqual([...again].sort());
  });
});

describe('corrections', () => {
  test('every denied word has a pronunciation, since words without one are composed where they occur', () => {
    const { pronunciations, homographs } = readHandMade();
    const said = new Set([...readCmudict().keys(), ...pronunciations.keys(), ...homographs.keys()]);
    expect(
      [...readCorrections().deny].filter((word) => !said.has(word)),
      'give it one in pronunciations.tsv too',
    ).toEqual([]);
  });

  test('no word is both denied and allowed', () => {
    const { deny, allow } = readCorrections();
    expect([...allow.keys()].filter((word) => deny.has(word))).toEqual([]);
  });
});
