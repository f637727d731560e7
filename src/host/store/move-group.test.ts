import { expect, test } from 'vitest';
import { parseGroup, parseSequence } from '../../analyze/index.ts';
import { datedMoves, groupOn, moveGroup, withinSequence } from './move-group.ts';

const herons = parseGroup({ name: 'Herons', sequence: 'steady-steps', step: 4 });

test('each move keeps its date, and the group can be looked up as of any day', () => {
  const september = moveGroup(herons, { step: 6 }, '2026-09-07');
  const november = moveGroup(september, { step: 9, sequence: 'second-tide' }, '2026-11-02');
  expect(november).toMatchObject({ step: 9, sequence: 'second-tide' });
  expect(datedMoves(november).map(({ date, step }) => `${date} ${step}`)).toEqual([
    '2026-11-02 9',
    '2026-09-07 6',
  ]);
  expect(groupOn(november, '2026-09-06')).toMatchObject({ step: 4, sequence: 'steady-steps' });
  expect(groupOn(november, '2026-09-07').step).toBe(6);
  expect(groupOn(november, '2026-11-01').step).toBe(6);
  expect(groupOn(november, '2027-01-01')).toMatchObject({ step: 9, sequence: 'second-tide' });
  expect(parseGroup(november)).toEqual(november);
});

test('a move that is entered late is sorted by its date', () => {
  const november = moveGroup(herons, { step: 9 }, '2026-11-02');
  const days = datedMoves(moveGroup(november, { step: 6 }, '2026-09-07')).map(({ date }) => date);
  expect(days).toEqual(['2026-11-02', '2026-09-07']);
});

test('every move on a day is kept, and the last move of the day sets the step', () => {
  const moved = [5, 6, 7].reduce((group, step) => moveGroup(group, { step }, '2026-09-07'), herons);
  expect(datedMoves(moved).map(({ step }) => step)).toEqual([7, 6, 5]);
  expect(groupOn(moved, '2026-09-07').step).toBe(7);
  expect(parseGroup(moved)).toEqual(moved);
});

test('a group that never moved has its present step on every day', () => {
  expect(groupOn(herons, '1999-01-01')).toEqual(herons);
});

test('a step beyond a shortened sequence becomes its last step, or step 0 without a sequence', () => {
  const short = parseSequence({
    id: 'short',
    name: 'Short',
    source: 'Tarn Quay School',
    licence: 'own',
    steps: [{ teaches: ['m'] }, { teaches: ['s'] }],
  });
  expect(withinSequence(herons, short).step).toBe(2);
  expect(withinSequence({ ...herons, step: 1 }, short).step).toBe(1);
  expect(withinSequence(herons, null).step).toBe(0);
});
