import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeSpellings } from '../../src/analyze/build/place-spellings.ts';
import { bitOf } from '../../src/analyze/catalogue/names.ts';
import { analysedAs } from '../../src/analyze/homographs/word-key.ts';
import { createAnalyzer } from '../../src/analyze/index.ts';
import { weighWord } from '../../src/analyze/standing/weigh-word.ts';
import type { Reading } from '../../src/analyze/types.ts';
import { readFrequency } from '../../src/data/read-frequency.ts';
import { loadAnalyzer, loadLexicon } from '../load-analyzer.ts';

const analyzer = loadAnalyzer();
const words = [...readFrequency().keys()].slice(0, 40_000);
const listed = fc.constantFrom(...words);
const seeded = { seed: 20_261_125, numRuns: 2000 };
const read = (word: string): Reading[] =>
  analyzer.analyze(word).readings.filter(({ source }) => source !== 'none');

describe('laws of the word analysis', () => {
  test('units rebuild the spelling and the pronunciation', () => {
    fc.assert(
      fc.property(listed, (word) => {
        for (const { units, pronunciation } of read(word)) {
          expect(placeSpellings(word, units), word).not.toBeNull();
          const sounds = units.map(({ sound }) => sound).filter((sound) => sound !== '-');
          expect(sounds.join(' ').replaceAll('.', ' ')).toBe(pronunciation);
        }
      }),
      seeded,
    );
  });

  // Before the guessing model is loaded, the background already answers for words of the table
  // (host/data/load-engine.ts).
  test('no word of the table needs the guessing model, in either accent', () => {
    const lexicon = loadLexicon();
    const asked: string[] = [];
    const without = createAnalyzer(lexicon, {
      guess(word) {
        asked.push(word);
        return null;
      },
      costOf: (word) => asked.push(word),
    });
    const british = without.speaking({ accent: 'british', bath: 'father' });
    const inTable = words.filter((word) => lexicon.find(word) !== null);
    fc.assert(
      fc.property(fc.constantFrom(...inTable), (word) => {
        without.analyze(word);
        british.analyze(word);
        expect(asked).toEqual([]);
      }),
      seeded,
    );
  });

  // A judge therefore analyses a word once for all its keys (standing/weigh-word.ts).
  test('the capitals and signs of a key make no difference to the data that judging needs', () => {
    const capitals = [
      (word: string) => word,
      (word: string) => word[0]!.toUpperCase() + word.slice(1),
      (word: string) => word.toUpperCase(),
    ];
    const signs = fc.constantFrom('', '^', '~', '+', '=');
    fc.assert(
      fc.property(listed, fc.constantFrom(...capitals), signs, (word, write, sign) => {
        const key = write(word) + sign;
        expect(weighWord(analyzer.analyze(key))).toEqual(weighWord(analyzer.analyze(analysedAs(key))));
      }),
      seeded,
    );
  });

  test('syllables rebuild the spelling', () => {
    fc.assert(
      fc.property(listed, (word) => {
        for (const { syllables } of read(word)) {
          expect(syllables.map(({ text }) => text).join('')).toBe(word);
          expect(syllables.every(({ text }) => text.length > 0)).toBe(true);
        }
      }),
      seeded,
    );
  });

  test('the required patterns of a word are sorted, in the catalogue, and include every pattern of its units', () => {
    fc.assert(
      fc.property(listed, (word) => {
        for (const { units, requires } of read(word)) {
          expect(requires).toEqual([...new Set(requires)].sort());
          expect(requires.filter((id) => !bitOf.has(id))).toEqual([]);
          expect(requires).toEqual(expect.arrayContaining(units.map(({ pattern }) => pattern)));
        }
      }),
      seeded,
    );
  });

  test('any text is analysed the same way each time, and has at least one reading', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40, size: 'max' }), (text) => {
        const first = analyzer.analyze(text);
        expect(first.readings.length).toBeGreaterThan(0);
        expect(analyzer.analyze(text)).toEqual(first);
      }),
      seeded,
    );
  });

  test('the order in which words are analysed changes nothing', () => {
    fc.assert(
      fc.property(fc.uniqueArray(listed, { minLength: 2, maxLength: 12 }), (some) => {
        const forwards = loadAnalyzer();
        const backwards = loadAnalyzer();
        const one = some.map((word) => forwards.analyze(word));
        const other = some.toReversed().map((word) => backwards.analyze(word));
        expect(other.reverse()).toEqual(one);
      }),
      { ...seeded, numRuns: 40 },
    );
  });
});
