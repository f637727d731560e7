import { expect, test } from 'vitest';
import type { Climb } from '../analyze/index.ts';
import type { Sequence } from '../analyze/types.ts';
import { describeClimb } from './describe-climb.ts';

const sequence: Sequence = {
  id: 'quay',
  name: 'Quay steps',
  source: 'test',
  licence: 'MIT',
  steps: [
    { title: 'First sounds', teaches: ['m'], bySight: [] },
    { teaches: ['ee'], bySight: ['the'] },
    { teaches: [], bySight: ['said'] },
  ],
};
const climb: Climb = {
  reach: [0, 50, 95.2, 96],
  opens: [0, 20, 18, 1],
  withHelp: 2,
  alone: null,
  opensMost: 1,
};

test('says where the group is, where the marks are met, and what opens most', () => {
  expect(describeClimb(climb, sequence, 1)).toEqual([
    'At step 1 the group can read 50.0%.',
    'It reaches 95% at step 2 (ee as in feet).',
    'It does not reach 99% within this sequence.',
    'Of the steps ahead, step 2 (ee as in feet) opens most: 18 words.',
  ]);
});

test('what is behind the group was reached; a text may be known from the start, and one word is one word', () => {
  expect(describeClimb(climb, sequence, 3)[1]).toBe('It reached 95% at step 2 (ee as in feet).');
  const known = {
    ...climb,
    reach: [99, 99, 99, 99.5],
    opens: [99, 0, 0, 1],
    withHelp: 0,
    alone: 0,
    opensMost: 3,
  };
  expect(describeClimb(known, sequence, 0)).toEqual([
    'Before the first step the group can read 99.0%.',
    'It reached 95% before the first step.',
    'It reached 99% before the first step.',
    'Of the steps ahead, step 3 (by sight: said) opens most: 1 word.',
  ]);
  expect(describeClimb({ ...known, opens: [99, 0, 0, 0] }, sequence, 0).at(-1)).toBe(
    'No later step makes more words of this text readable.',
  );
  expect(describeClimb(known, sequence, 3)).toHaveLength(3);
});
