import fc from 'fast-check';
import { expect, test } from 'vitest';
import { openLexicon } from '../../analyze/lexicon/open-lexicon.ts';
import type { ReadingRecord, WordRecord } from '../../analyze/lexicon/word-record.ts';
import type { Usage } from '../../analyze/types.ts';
import { writeTable } from './write-table.ts';

const unit = fc.record({
  letters: fc.constantFrom('a', 'b', 'sh', 'igh', 'o_e', 'tion'),
  sound: fc.constantFrom('EY', 'B', 'SH', 'AY', 'OW', 'SH.AX.N', '-'),
});
const madeBy = fc.record({
  affix: fc.record({
    letters: fc.constantFrom('ing', 'un'),
    sound: fc.constant('IH.NG'),
    kind: fc.constantFrom('suffix', 'prefix'),
  }),
  stem: fc.nat(3),
  reading: fc.nat(1),
  lessened: fc.boolean(),
}) as fc.Arbitrary<NonNullable<Extract<ReadingRecord, { kind: 'whole' }>['madeBy']>>;
const reading: fc.Arbitrary<ReadingRecord> = fc.oneof(
  fc.record({
    kind: fc.constant('whole' as const),
    units: fc.array(unit, { minLength: 1, maxLength: 31, size: 'max' }),
    madeBy: fc.option(madeBy),
  }),
  fc.record({ kind: fc.constant('affixed' as const), madeBy }),
  fc.record({ kind: fc.constant('compound' as const), cut: fc.nat(40), left: fc.nat(3), right: fc.nat(3) }),
);
const record: fc.Arbitrary<WordRecord> = fc.record({
  readings: fc.array(reading, { minLength: 1, maxLength: 3 }),
  homograph: fc.boolean(),
});
// Words with few different letters and long shared beginnings, so that every encoding of a length occurs.
const word = fc.oneof(
  fc.string({ unit: fc.constantFrom('a', 'b', "'"), minLength: 1, maxLength: 40, size: 'max' }),
  fc.string({ unit: fc.constantFrom('a', 'b'), maxLength: 4 }).map((end) => `institutionalisa${end}`),
);

const usageOf = (key: string): Usage => (['common', 'rare', 'name'] as const)[key.length % 3]!;

test('every stored word is found unchanged, and no other word is found', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.tuple(word, record), {
        minLength: 1,
        maxLength: 60,
        size: 'max',
        selector: ([key]) => key,
      }),
      word,
      (entries, other) => {
        const records = new Map(entries);
        const lexicon = openLexicon(writeTable(records, usageOf));
        expect(lexicon.size).toBe(records.size);
        for (const [key, value] of records)
          expect(lexicon.find(key), key).toEqual({ ...value, usage: usageOf(key) });
        if (!records.has(other)) expect(lexicon.find(other)).toBeNull();
      },
    ),
    { seed: 20_261_125, numRuns: 150 },
  );
});

test('the same records in any order give the same bytes', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.tuple(word, record), {
        minLength: 1,
        maxLength: 30,
        size: 'max',
        selector: ([key]) => key,
      }),
      (entries) => {
        expect(writeTable(new Map(entries.toReversed()), usageOf)).toEqual(
          writeTable(new Map(entries), usageOf),
        );
      },
    ),
    { seed: 20_261_125, numRuns: 60 },
  );
});

test('a file that is not a word table is refused with an error that names the next step', () => {
  expect(() => openLexicon(new Uint8Array(3))).toThrow(/npm run data/);
  expect(() => openLexicon(new Uint8Array([9, 0, 0, 0, 1, 0, 0, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 9]))).toThrow(
    /npm run data/,
  );
});
