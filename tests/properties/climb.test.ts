import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Climb,
  catalogue,
  climbText,
  compileGroup,
  createClimber,
  createJudge,
  parseSequence,
  tallyText,
  tokenize,
  type WordAnalyzer,
} from '../../src/analyze/index.ts';
import type { Group, Sequence, WordKey } from '../../src/analyze/types.ts';
import { readFrequency } from '../../src/data/read-frequency.ts';
import { groupOf } from '../fakes/group.ts';
import * as madeUp from '../fakes/made-up.ts';
import { loadAnalyzer } from '../load-analyzer.ts';

/** Checks the law of the climb: at every step, the climb gives the same result as judging the whole text at that step. */
function expectLaw(
  words: readonly [WordKey, number][],
  analyzer: WordAnalyzer,
  group: Group,
  sequence: Sequence | null,
): Climb {
  const counts = { words, skipped: 1 };
  const climb = climbText(counts, createClimber(analyzer, group, sequence));
  const atSteps = Array.from({ length: (sequence?.steps.length ?? 0) + 1 }, (_, step) =>
    tallyText(counts, createJudge(analyzer, compileGroup({ ...group, step }, sequence))),
  );
  expect(climb.reach).toEqual(atSteps.map(({ reach }) => reach));
  const readable = atSteps.map(({ reads, fresh, bySight }) => reads + fresh + bySight);
  expect(climb.opens).toEqual(readable.map((count, step) => count - (readable[step - 1] ?? 0)));
  return climb;
}

test('the climb of words made from few patterns gives the same as judging at each step', () => {
  fc.assert(
    fc.property(
      madeUp.analyzer,
      madeUp.group,
      fc.option(madeUp.sequence),
      madeUp.text,
      (analyzer, group, sequence, words) => {
        expectLaw(words, analyzer, { ...group, sequence: sequence?.id ?? null }, sequence);
      },
    ),
    { seed: 1946, numRuns: 2000 },
  );
});

const analyzer = loadAnalyzer();
const common = [...readFrequency().keys()].slice(0, 12_000);
const folder = new URL('../../profiles/sequences/', import.meta.url);
const starters = readdirSync(folder).map((file) =>
  parseSequence(JSON.parse(readFileSync(new URL(file, folder), 'utf8'))),
);

/** Words spelt alike, names, guessed words and words that no list has. Their standings differ from those of most words. */
const odd = [
  ...[
    'read',
    'read#0',
    'read#1',
    'Lead',
    'lead#1',
    'bow',
    'wind#0',
    'Rose',
    'tear',
    'does',
    'went',
    "Bram's",
  ],
  ...[
    'Wilma',
    'wilma',
    'Falk',
    'Marigold',
    'quay',
    'I',
    "I'm",
    'Monday',
    'zorblatic',
    'ndyx',
    'vops',
    '',
    '#1',
  ],
];
const key = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...common) },
  fc.constantFrom(...common).map((word) => word[0]!.toUpperCase() + word.slice(1)),
  fc.constantFrom(...odd),
);
const pattern = fc.constantFrom(...catalogue.map(({ id }) => id));
const group = fc
  .record({
    alsoTaught: fc.array(pattern, { maxLength: 12 }),
    notYet: fc.array(pattern, { maxLength: 6 }),
    bySight: fc.array(fc.oneof(fc.constantFrom(...common.slice(0, 300)), fc.constantFrom(...odd)), {
      maxLength: 8,
    }),
    names: fc.array(fc.constantFrom('Bram', 'Rose', 'ship', 'Quay', 'Lead'), { maxLength: 3 }),
    skip: fc.array(fc.constantFrom('the', 'Bram', 'read'), { maxLength: 1 }),
    options: madeUp.options,
  })
  .map(groupOf);
const text = fc.array(fc.tuple(key, fc.integer({ min: 1, max: 9 })), {
  minLength: 1,
  maxLength: 80,
  size: 'max',
});

describe.each(starters.map((sequence) => ({ id: sequence.id, sequence })))(
  'the climb through $id gives the same as judging at each step',
  ({ id, sequence }) => {
    test('for any group and text', () => {
      let met = 0;
      fc.assert(
        fc.property(group, text, (group, words) => {
          const { reach } = expectLaw(words, analyzer, { ...group, sequence: id }, sequence);
          if (reach[0] !== reach.at(-1)) met++;
        }),
        { seed: 95, numRuns: 25 },
      );
      expect(met).toBeGreaterThan(18);
    });

    test('for a whole story', () => {
      const { text: lamp } = JSON.parse(
        readFileSync(new URL('../passages/lamp-in-the-tent.json', import.meta.url), 'utf8'),
      ) as { text: string };
      const words = tokenize(lamp).map(({ key }): [WordKey, number] => [key, 1]);
      const climb = expectLaw(words, analyzer, groupOf({ sequence: id }), sequence);
      expect(climb.reach.at(-1)).toBeGreaterThan(climb.reach[0]! + 50);
    });
  },
);
