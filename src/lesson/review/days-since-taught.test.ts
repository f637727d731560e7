import { expect, test } from 'vitest';
import type { Group, Sequence } from '../../analyze/types.ts';
import { daysSinceTaught } from './days-since-taught.ts';

const sequence: Sequence = {
  id: 'harbour',
  name: 'Harbour',
  source: '',
  licence: '',
  steps: ['ai', 'ee', 'oa', 'igh', 'ar'].map((id) => ({ teaches: [id], bySight: [] })),
};
const herons = (more: Partial<Group>): Group => ({
  name: 'Herons',
  sequence: 'harbour',
  step: 4,
  alsoTaught: [],
  notYet: [],
  bySight: [],
  names: [],
  options: {},
  ...more,
});
const days = (more: Partial<Group>) => {
  const found = daysSinceTaught(herons(more), sequence, '2026-11-25');
  const ages: Record<string, number> = Object.fromEntries(found.days);
  return { ...ages, estimated: found.estimated } as Record<string, number | boolean>;
};

test('without dates each step counts as a week, back from the day', () => {
  expect(days({})).toEqual({ igh: 0, oa: 7, ee: 14, ai: 21, estimated: true });
});

test('dated steps use their dates, and earlier steps count a week each back from the first date', () => {
  const history = [
    { date: '0001-01-01', sequence: 'harbour', step: 2 },
    { date: '2026-11-10', sequence: 'harbour', step: 3 },
    { date: '2026-11-23', sequence: 'harbour', step: 4 },
  ];
  expect(days({ history })).toEqual({ igh: 2, oa: 15, ee: 22, ai: 29, estimated: true });
});

test('steps skipped in one move are as old as the move, and moves in another sequence do not count', () => {
  const history = [
    { date: '2026-10-01', sequence: 'hill', step: 4 },
    { date: '2026-11-20', sequence: 'harbour', step: 4 },
  ];
  expect(days({ history })).toEqual({ igh: 5, oa: 5, ee: 5, ai: 5, estimated: false });
});

test('patterns taught outside the sequence are as old as its first step', () => {
  expect(days({ alsoTaught: ['ch'] }).ch).toBe(21);
  const history = [{ date: '2027-01-01', sequence: 'harbour', step: 4 }];
  expect(days({ history }).igh).toBe(0);
});
