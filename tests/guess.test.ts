import { statSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BuiltWord, spellingsOf } from '../src/analyze/build/built-word.ts';
import { placeSpellings } from '../src/analyze/build/place-spellings.ts';
import { buildFromTokens } from '../src/analyze/guess/build-from-tokens.ts';
import { tokensOf } from '../src/analyze/guess/guess-token.ts';
import { openGuesser } from '../src/analyze/guess/open-guesser.ts';
import { openModel } from '../src/analyze/guess/open-model.ts';
import { createCodeReader } from '../src/analyze/guess/read-codes.ts';
import type { WordRecord } from '../src/analyze/lexicon/word-record.ts';
import type { Reading } from '../src/analyze/types.ts';
import { buildGuesser } from '../src/data/guess/build-guesser.ts';
import { createCodeWriter } from '../src/data/guess/write-codes.ts';
import { readFrequency } from '../src/data/read-frequency.ts';
import { loadAnalyzer, loadGuesser, loadLexicon } from './load-analyzer.ts';
import { nonsenseSyllables } from './words/nonsense-syllables.ts';

const analyzer = loadAnalyzer();
const guesser = loadGuesser();
const seeded = { seed: 20_261_125, numRuns: 1000 };
const letters = fc.string({
  unit: fc.constantFrom(...'abcdefghijklmnopqrstuvwxyz'),
  minLength: 2,
  maxLength: 25,
  size: 'max',
});
const first = (word: string): Reading => analyzer.analyze(word).readings[0]!;
const show = (built: BuiltWord): string =>
  built.parts
    .map(({ spellings }) => spellings.map((one) => `${one.letters}:${one.sound}`).join(' '))
    .join(' + ');

describe('the coder of values', () => {
  test('gives back the values that were written', () => {
    const one = fc.record({
      kind: fc.integer({ min: 1, max: 20 }),
      byte: fc.oneof(fc.constant(0), fc.nat(3), fc.nat(255)),
      number: fc.oneof(fc.nat(9), fc.nat(65_535)),
    });
    fc.assert(
      fc.property(fc.array(one, { maxLength: 400, size: 'max' }), (told) => {
        const writer = createCodeWriter(30);
        for (const { kind, byte, number } of told) {
          writer.byte(kind, byte);
          writer.number(25, number);
        }
        const reader = createCodeReader(writer.end(), 0, 30);
        expect(told.map(({ kind }) => [reader.byte(kind), reader.number(25)])).toEqual(
          told.map(({ byte, number }) => [byte, number]),
        );
      }),
      seeded,
    );
  });

  test('takes less space for values that are more predictable', () => {
    const room = (values: number): number => {
      const writer = createCodeWriter(2);
      for (let i = 1; i <= 8000; i++) writer.byte(1, i % 100 === 0 ? i % values : 0);
      return writer.end().length;
    };
    const even = createCodeWriter(2);
    for (let i = 0; i < 8000; i++) even.byte(1, i % 256);
    expect(room(3)).toBeLessThan(1030);
    expect(even.end().length).toBeGreaterThan(8000);
  });

  test('writes a rare value among thousands of frequent ones', () => {
    const writer = createCodeWriter(2);
    const values = Array.from({ length: 20 }, (_, value) =>
      Array<number>((2 ** value) >> 4).fill(value),
    ).flat();
    for (const value of [0, ...values]) writer.byte(1, value);
    const reader = createCodeReader(writer.end(), 0, 2);
    expect([0, ...values].findIndex((value) => reader.byte(1) !== value)).toBe(-1);
  });
});

describe('a small model', () => {
  const words = 'gull hull pull dull lull bell fell sell tell hill till sill bill fill'.split(' ');
  const records = new Map(
    words.map((word): [string, WordRecord] => {
      const sounds = { g: 'G', h: 'HH', p: 'P', d: 'D', l: 'L', b: 'B', f: 'F', s: 'S', t: 'T' };
      const vowels = { u: 'AH', e: 'EH', i: 'IH' };
      const units = [
        { letters: word[0]!, sound: sounds[word[0] as keyof typeof sounds] },
        { letters: word[1]!, sound: vowels[word[1] as keyof typeof vowels] },
        { letters: 'll', sound: 'L' },
      ];
      return [word, { readings: [{ kind: 'whole', units, madeBy: null }], homograph: false }];
    }),
  );
  const pronunciations = new Map<string, readonly (readonly string[])[]>();
  const bytes = buildGuesser(records, pronunciations);

  test('is the same for any order of the words', () => {
    expect(buildGuesser(new Map([...records].reverse()), pronunciations)).toEqual(bytes);
  });

  test('assigns all probability to the tokens that may follow', () => {
    const model = openModel(bytes);
    const number = (text: string): number => model.tokens.findIndex((token) => token.text === text);
    const afterLl = model.step(model.start, number('ll'));
    for (const state of [0, model.start, afterLl, model.step(afterLl, number('u'))]) {
      let sum = 0;
      for (let token = 1; token < model.tokens.length; token++) {
        model.step(state, token);
        sum += Math.exp(-model.cost);
      }
      // Probabilities and backoffs are rounded to eighths of a natural logarithm. Together, they are off by at most an
      // eighth.
      expect(sum).toBeGreaterThan(Math.exp(-1 / 8));
      expect(sum).toBeLessThan(Math.exp(1 / 8));
    }
  });

  test('reads an unknown word from the parts of known words', () => {
    const { guess } = openGuesser(bytes);
    expect(show(guess('pell')!.built)).toBe('p:P e:EH ll:L');
    expect(guess('pox')).toBeNull();
  });

  test('is refused when its data are cut short or damaged', () => {
    expect(() => openGuesser(bytes.subarray(0, 6)).guess('gull')).toThrow('npm run data');
    for (const length of [50, 500, bytes.length - 20])
      expect(() => openGuesser(bytes.subarray(0, length)).guess('gull')).toThrow('npm run data');
    expect(() => openGuesser(Uint8Array.from({ length: 300 }, (_, i) => i % 7)).guess('gull')).toThrow(
      'npm run data',
    );
  });
});

describe('the guesser', () => {
  test('has a model of at most 600,000 bytes in the package', () => {
    expect(statSync(new URL('../public/data/guess.bin', import.meta.url)).size).toBeLessThanOrEqual(600_000);
  });

  test.each([
    ['zorvane', 'z:Z or:AO.R v:V a_e:EY n:N'],
    ['glimpering', 'g:G l:L i:IH m:M p:P er:ER + ing:IH.NG'],
    ['smeech', 's:S m:M ee:IY ch:CH'],
    ['sprindle', 's:S p:P r:R i:IH n:N d:D le:AX.L'],
    ['tarnation', 't:T ar:AA.R n:N a:EY tion:SH.AX.N'],
  ])('reads %s with the expected units', (word, units) => {
    expect(show(guesser.guess(word)!.built)).toBe(units);
  });

  test('reads any letters, spelling by spelling, and refuses other text', () => {
    fc.assert(
      fc.property(letters, (word) => {
        const guess = guesser.guess(word);
        expect(guess && placeSpellings(word, spellingsOf(guess.built)), word).not.toBeNull();
      }),
      seeded,
    );
    for (const other of ['', 'a', "gull's", 'café', 'Gull', 'no9', 'a'.repeat(26)])
      expect(guesser.guess(other)).toBeNull();
  });

  test('gives each guess the cost of its reading', () => {
    const common = [...readFrequency().keys()].slice(0, 20_000).filter((word) => /^[a-z]{2,25}$/.test(word));
    fc.assert(
      fc.property(fc.constantFrom(...common), (word) => {
        const guess = guesser.guess(word)!;
        expect(guesser.costOf(word, guess.built)).toBeCloseTo(guess.cost, 6);
      }),
      seeded,
    );
  });

  test('overlooks a listed reading of lower cost in at most 0.5% of words', () => {
    const lexicon = loadLexicon();
    const words = [...readFrequency().keys()].slice(0, 20_000).filter((_, i) => i % 10 === 0);
    const missed = words.filter((word) => {
      const record = lexicon.find(word)?.readings[0];
      if (record?.kind !== 'whole' || record.madeBy) return false;
      const listed = { parts: [{ role: 'base' as const, spellings: record.units }], base: null, affixes: [] };
      const guess = guesser.guess(word);
      return guess !== null && guesser.costOf(word, listed) < guess.cost - 1e-6;
    });
    expect(missed.length, missed.join(' ')).toBeLessThanOrEqual(words.length * 0.005);
  });

  test('rebuilds a word from its tokens', () => {
    const base = { role: 'base' as const, spellings: [{ letters: 'h', sound: 'HH' }, { letters: 'o', sound: 'OW', spells: 'o_e' }, { letters: 'p', sound: 'P' }] }; // biome-ignore format: one word
    const ing = { role: 'suffix' as const, spellings: [{ letters: 'ing', sound: 'IH.NG' }] };
    const hoping: BuiltWord = {
      parts: [base, ing],
      base: 'hope',
      affixes: [{ text: 'ing', kind: 'suffix', change: 'drop-e' }],
    };
    expect(buildFromTokens(tokensOf('hoping', hoping)!)).toEqual(hoping);
    expect(tokensOf('hopping', hoping)).toBeNull();
  });
});

describe('words in no word list', () => {
  test.each([
    ['tidepool', 'derived', 'tide', 'pool:none'],
    ['kayaked', 'derived', 'kayak', 'ed:none'],
    ['resalt', 'derived', 'salt', 're:none'],
    ['plodging', 'guess', 'plodge', 'ing:drop-e'],
    ['zogging', 'guess', 'zog', 'ing:double'],
    ['droskiest', 'guess', 'drosky', 'est:y-to-i'],
    ['actuation', 'guess', 'actuate', 'ion:drop-e'],
    ['egression', 'guess', 'egress', 'ion:none'],
    // The word is not coo + ties, although both words are common.
    ['cooties', 'guess', 'cooty', 'es:y-to-i'],
    ['zorvane', 'guess', null, ''],
    ["zorvane's", 'guess', 'zorvane', "'s:none"],
    ['glonk', 'rule', null, ''],
  ])(
    '%s gets its reading from the source “%s”, with the right base and affixes',
    (word, source, base, affixes) => {
      const reading = first(word);
      expect(reading.source).toBe(source);
      expect(reading.base).toBe(base);
      expect(reading.affixes.map(({ text, change }) => `${text}:${change}`).join('+')).toBe(affixes);
    },
  );

  test('invented syllables are read with the first sound of each spelling', () => {
    const unlisted = nonsenseSyllables().filter(({ word }) => first(word).source !== 'dictionary');
    const odd = unlisted.filter(({ word, sounds }) => !sounds.includes(first(word).pronunciation));
    expect(unlisted.length).toBeGreaterThanOrEqual(5000);
    expect(odd.length / unlisted.length, odd.map(({ word }) => word).join(' ')).toBeLessThanOrEqual(0.001);
  });
});
