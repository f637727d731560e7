import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SequenceStep } from '../../analyze/types.ts';
import {
  duplicateStep,
  type EditedSteps,
  insertStep,
  mergeSteps,
  moveStep,
  removeStep,
  splitStep,
  teachIn,
} from './edit-steps.ts';

const steps: readonly SequenceStep[] = [
  { title: 'One', teaches: ['m', 's', 't'], bySight: ['the', 'a'] },
  { title: 'Two', teaches: ['p'], bySight: ['said', 'of'] },
  { title: 'Three', teaches: ['sh', 'ch'], bySight: [] },
];

/** Returns the contents of all steps as one line of text. */
const told = (edited: EditedSteps): string =>
  edited.steps.map(({ teaches, bySight }) => [...teaches, ...bySight].join(' ')).join(' | ');

test('teaching a pattern in a step removes it from every other step', () => {
  expect(told(teachIn(steps, 1, 'sh'))).toBe('m s t the a | p sh said of | ch');
});

test('a step is split in half, or into its one pattern and its by-sight words', () => {
  expect(told(splitStep(steps, 0))).toBe('m s the | t a | p said of | sh ch');
  expect(told(splitStep(steps, 1))).toBe('m s t the a | p | said of | sh ch');
  expect(told(splitStep([{ teaches: ['m'], bySight: [] }], 0))).toBe('m');
});

test('two steps are merged into one', () => {
  const merged = mergeSteps(steps, 0);
  expect(told(merged)).toBe('m s t p the a said of | sh ch');
  expect(merged.steps[0]!.title).toBe('One; Two');
  expect(mergeSteps(steps, 2).steps).toEqual(steps);
});

test('a duplicated step keeps the title and teaches nothing, so that nothing is taught twice', () => {
  expect(duplicateStep(steps, 0).steps[1]).toEqual({ title: 'One (again)', teaches: [], bySight: [] });
});

describe('a group keeps what it was taught', () => {
  const taught = (list: readonly SequenceStep[], at: number): string[] =>
    list
      .slice(0, at)
      .flatMap(({ teaches, bySight }) => [...teaches, ...bySight])
      .sort();
  const place = fc.record({ at: fc.nat(2), to: fc.nat(2), step: fc.nat(3) });

  test.each<[string, (at: number, to: number) => EditedSteps]>([
    ['when a step is put in', (at) => insertStep(steps, at, { teaches: [], bySight: [] })],
    ['when a step is duplicated', (at) => duplicateStep(steps, at)],
    ['when a step is parted', (at) => splitStep(steps, at)],
  ])('%s', (_, edit) => {
    fc.assert(
      fc.property(place, ({ at, to, step }) => {
        const edited = edit(at, to);
        expect(taught(edited.steps, edited.place(step))).toEqual(taught(steps, step));
      }),
      { seed: 11 },
    );
  });

  test('when a step is moved, except for what the moved step teaches', () => {
    fc.assert(
      fc.property(place, ({ at, to, step }) => {
        const edited = moveStep(steps, at, to);
        const moved = new Set(taught([steps[at]!], 1));
        const others = (items: readonly string[]): string[] => items.filter((item) => !moved.has(item));
        expect(others(taught(edited.steps, edited.place(step)))).toEqual(others(taught(steps, step)));
      }),
      { seed: 11 },
    );
  });

  test('when a step is removed, except for what the removed step teaches', () => {
    const edited = removeStep(steps, 0);
    expect([0, 1, 2, 3].map(edited.place)).toEqual([0, 0, 1, 2]);
  });

  test('when steps are merged, and a group at the first step is also taught the second', () => {
    const edited = mergeSteps(steps, 0);
    expect([0, 1, 2, 3].map(edited.place)).toEqual([0, 1, 1, 2]);
  });
});
