import { expect, test } from 'vitest';
import { takeSlice, takeSteps, takeStepsInSlices } from './take-steps.ts';

/** Counts the steps it has taken in `taken`. */
function* count(steps: number, taken: { count: number }): Generator<undefined, { readonly count: number }> {
  for (let step = 0; step < steps; step++) {
    taken.count++;
    yield;
  }
  return taken;
}

/** Never ends. */
function* endless(): Generator<undefined, { readonly count: number }> {
  for (;;) yield;
}

test('work in steps has the same result at once, in one slice and in slices', async () => {
  expect(takeSteps(count(3, { count: 0 }))).toEqual({ count: 3 });
  expect(takeSlice(count(3, { count: 0 }))).toEqual({ count: 3 });
  const { signal } = new AbortController();
  expect(await takeStepsInSlices(count(3, { count: 0 }), signal)).toEqual({ count: 3 });
});

test('a slice of work in steps ends before the work does', () => {
  expect(takeSlice(endless())).toBeNull();
});

test('work in steps that is given up takes no further step and has no result', async () => {
  const taken = { count: 0 };
  const controller = new AbortController();
  const made = takeStepsInSlices(count(3, taken), controller.signal);
  controller.abort();
  expect(await made).toBeNull();
  expect(taken.count).toBe(0);
});
