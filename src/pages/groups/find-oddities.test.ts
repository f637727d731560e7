import { expect, test } from 'vitest';
import { loadAnalyzer } from '../../../tests/load-analyzer.ts';
import type { Sequence, SequenceStep } from '../../analyze/types.ts';
import { starterSequences } from '../../host/store/sequences.ts';
import { findOddities, neverTaught } from './find-oddities.ts';

const engine = loadAnalyzer();
const sequenceOf = (...steps: Partial<SequenceStep>[]): Sequence => ({
  id: 'own',
  name: 'Own',
  source: 'test',
  licence: 'test',
  steps: steps.map((step) => ({ teaches: [], bySight: [], ...step })),
});
const oddities = (...steps: Partial<SequenceStep>[]): string[] =>
  findOddities(sequenceOf(...steps), engine).map(({ step, says }) => `${step}: ${says}`);

test('a sequence in a sensible order has no oddities', () => {
  expect(
    oddities(
      { teaches: ['m', 's', 't', 'short-a', 'h', 'r'], bySight: ['said', 'the'] },
      { teaches: ['th', 'start-thr', 'start-st'] },
      { teaches: ['suffix-ing', 'change-double'] },
    ),
  ).toEqual([]);
});

test.each<[string, Partial<SequenceStep>[]]>([
  ['1: This step teaches nothing yet.', [{ teaches: ['m'] }, {}]],
  ['1: Step 1 already teaches “The” as a by-sight word.', [{ bySight: ['the'] }, { bySight: ['The'] }]],
  [
    '0: Thr at the start of a word comes before its letters are taught.',
    [{ teaches: ['t', 'r', 'start-thr'] }],
  ],
  ['0: St at the start of a word comes before its letters are taught.', [{ teaches: ['start-st'] }]],
  [
    '0: Double the final consonant comes before any suffix that needs it (-ing, -ed, -es).',
    [{ teaches: ['change-double', 'suffix-ful'] }],
  ],
  [
    '0: Already decodable at this step: “map”. No need to teach as by-sight words?',
    [{ teaches: ['m', 'short-a', 'p'], bySight: ['map'] }],
  ],
])('the only oddity reported is “%s”', (says, steps) => {
  expect(oddities(...steps)).toEqual([says]);
});

test('neverTaught lists patterns that no step teaches', () => {
  const missing = neverTaught(sequenceOf({ teaches: ['m'] })).map(({ id }) => id);
  expect(missing).toContain('ai');
  expect(missing).not.toContain('m');
  expect(missing).not.toContain('irregular');
});

const ownOrder = starterSequences().filter(({ id }) => id === 'steady-steps' || id === 'second-tide');
test.each(ownOrder)('the starter $name has no oddities', (sequence) => {
  expect(findOddities(sequence, engine)).toEqual([]);
});
