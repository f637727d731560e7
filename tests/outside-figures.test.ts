import { describe, expect, test } from 'vitest';
import { catalogue } from '../src/analyze/index.ts';
import { readFrequency } from '../src/data/read-frequency.ts';
import { generalisations } from './accuracy/clymer.ts';
import { spellingShares, unitLists } from './accuracy/spelling-shares.ts';
import { loadAnalyzer } from './load-analyzer.ts';

const analyzer = loadAnalyzer();
const ranked = [...readFrequency().keys()].filter((word) => /^[a-z]{2,}$/.test(word));

// Source: T. Clymer 1963, from memory. The reason for each tolerance is given beside it.
describe('generalisations hold about as often as Clymer found', () => {
  const lists = unitLists(ranked.slice(0, 3000), analyzer);
  test.each(generalisations)('$says: $clymer % within $within', ({ clymer, within, measure }) => {
    expect(Math.abs(measure(lists) - clymer)).toBeLessThanOrEqual(within);
  });
});

// Orders of spellings as in P. R. Hanna and others 1966, repeated by E. Fry 2004, from memory. Only the leading
// spellings are compared, because Hanna's list counts 17,000 words of all kinds and our list counts 20,000 common
// words.
describe('the leading spellings of a sound are the same as in Hanna 1966 and Fry 2004', () => {
  const lists = unitLists(ranked.slice(0, 20_000), analyzer);
  test.each([
    ['long a', ['EY'], ['a', 'a_e', 'ai', 'ay']],
    ['long o', ['OW'], ['o', 'o_e']],
    ['long i', ['AY'], ['i', 'i_e', 'y']],
    ['short u', ['AH'], ['u', 'o', 'ou']],
    ['k', ['K'], ['c', 'k']],
    ['j', ['JH'], ['g', 'j']],
    ['f', ['F'], ['f', 'ph', 'ff']],
  ])('%s', (_name, sounds, leaders) => {
    const order = [...spellingShares(lists, new Set(sounds)).keys()];
    expect(order.slice(0, leaders.length)).toEqual(leaders);
  });

  test('for long e, the five leading spellings are y, e, i, ea and ee in any order, since we separate a weak e', () => {
    const order = [...spellingShares(lists, new Set(['IY'])).keys()];
    expect(new Set(order.slice(0, 5))).toEqual(new Set(['y', 'e', 'i', 'ea', 'ee']));
  });
});

// Outside source: US Common Core State Standards for English Language Arts (2010), Reading: Foundational Skills,
// phonics and word recognition, paraphrased. Each standard is followed by the rows that a sequence would teach for it.
describe('each phonics standard of the Common Core has rows in the catalogue', () => {
  const families = new Set(catalogue.map(({ family }) => family));
  const ids = new Set(catalogue.map(({ id }) => id));
  const letters = (family: string): string[] =>
    catalogue.filter((row) => row.family === family).map((row) => row.letters);
  test('RF.K.3a: a sound for each consonant letter', () => {
    const taught = new Set(letters('consonant'));
    for (const letter of 'bcdfghjklmnprstvwxyz') expect(taught, letter).toContain(letter);
  });
  test('RF.K.3b: long and short sounds of the five vowels', () => {
    for (const vowel of 'aeiou') {
      expect(ids).toContain(`short-${vowel}`);
      expect(
        [...ids].some((id) => id.startsWith(`long-${vowel}`)),
        vowel,
      ).toBe(true);
    }
  });
  test.each([
    ['RF.1.3a consonant digraphs', ['sh', 'ch', 'th', 'wh', 'ck', 'ng']],
    [
      'RF.1.3c final e and vowel teams',
      ['a_e', 'i_e', 'o_e', 'u_e-oo', 'ai', 'ay', 'ee', 'ea-long-e', 'oa', 'igh'],
    ],
    ['RF.1.3e two-syllable words', ['syllables-2', 'type-closed', 'type-open', 'consonant-le']],
    [
      'RF.1.3f inflectional endings',
      ['suffix-s', 'suffix-es', 'suffix-ed-t', 'suffix-ed-d', 'suffix-ed-id', 'suffix-ing'],
    ],
    ['RF.1.3g, 2.3f, 3.3d irregular words', ['irregular']],
    [
      'RF.2.3b more vowel teams',
      ['oo-moon', 'oo-book', 'ou-ow', 'ow-ow', 'oi', 'oy', 'au', 'aw', 'ew-oo', 'ue-oo'],
    ],
    ['RF.2.3c two-syllable words with long vowels', ['long-a', 'long-e', 'long-i', 'long-o', 'type-vce']],
    [
      'RF.2.3d, 3.3a prefixes and suffixes',
      [
        'prefix-un',
        'prefix-re',
        'prefix-dis',
        'suffix-er',
        'suffix-ful',
        'suffix-less',
        'suffix-ly',
        'suffix-ness',
      ],
    ],
    ['RF.2.3e common but inconsistent spellings', ['ea-short-e', 'ow-long-o', 'o-short-u', 'ear-air']],
    [
      'RF.3.3b Latin suffixes',
      ['suffix-able', 'suffix-ible', 'suffix-ation', 'suffix-ity', 'suffix-ment', 'tion'],
    ],
    ['RF.3.3c longer words', ['syllables-3']],
  ])('%s', (_standard, wanted) => {
    expect(wanted.filter((id) => !ids.has(id))).toEqual([]);
    expect(families.size).toBeGreaterThan(10);
  });
});
