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

test('tells the current step, the steps that reach the marks, and the step that helps most', () => {
  expect(describeClimb(climb, sequence, 1)).toEqual([
    'At step 1, 50.0% is readable.',
    '95% will be readable from step 2 (ee as in feet).',
    'No step of this sequence makes 99% readable.',
    'The later step that helps most is step 2 (ee as in feet): with all steps before it taught, it adds 18 readable words.',
  ]);
});

test('a mark already passed is told in the past tense, and an early mark as met before the first step', () => {
  expect(describeClimb(climb, sequence, 3)[1]).toBe('95% has been readable since step 2 (ee as in feet).');
  const known = {
    ...climb,
    reach: [99, 99, 99, 99.5],
    opens: [99, 0, 0, 1],
    withHelp: 0,
    alone: 0,
    opensMost: 3,
  };
  expect(describeClimb(known, sequence, 0)).toEqual([
    'Before the first step, 99.0% is readable.',
    '95% was readable before the first step.',
    '99% was readable before the first step.',
    'The later step that helps most is step 3 (by-sight words: said): with all steps before it taught, it adds 1 readable word.',
  ]);
  expect(describeClimb({ ...known, opens: [99, 0, 0, 0] }, sequence, 0).at(-1)).toBe(
    'No later step makes more words of this text readable.',
  );
  expect(describeClimb(known, sequence, 3)).toHaveLength(3);
});
