import { expect, test } from 'vitest';
import { FileFault } from './file-fault.ts';
import { startFileTime } from './file-time.ts';

/** Creates steps of work, and a clock that each step moves on. */
function work(steps: number, each: number) {
  let now = 0;
  function* working(): Generator<void, string> {
    for (let n = 0; n < steps; n++) {
      now += each;
      yield;
    }
    return 'done';
  }
  return { working, time: startFileTime(10_000, () => now) };
}

test('work within its time limit is done', async () => {
  const { working, time } = work(999, 10);
  expect(await time.run(working())).toBe('done');
  expect(time.left()).toBe(10);
});

test('work beyond its time limit is refused with a file fault', async () => {
  const { working, time } = work(2000, 10);
  await expect(time.run(working())).rejects.toThrow(FileFault);
});

test('all work on a file shares one time limit', async () => {
  const { working, time } = work(300, 20);
  await time.run(working());
  await expect(time.run(working())).rejects.toThrow(/takes too long/);
});

test('the page gets its turn between the steps', async () => {
  let heard = 0;
  const { working, time } = work(100, 20);
  const timer = setInterval(() => heard++, 0);
  await time.run(working());
  clearInterval(timer);
  expect(heard).toBeGreaterThan(10);
});
