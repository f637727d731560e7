import { Worker } from 'node:worker_threads';
import { expect, test } from 'vitest';
import { FileFault } from '../passage/files/file-fault.ts';
import { createWorkerPool, type TaskLimits } from './worker-pool.ts';

/** Doubles a number. Throws at 13, exits without an error at 14, and never answers at 15. */
const doubling = `
const { parentPort, threadId } = require('node:worker_threads');
parentPort.on('message', (n) => {
  if (n === 13) throw new Error('unlucky');
  if (n === 14) process.exit(3);
  if (n !== 15) parentPort.postMessage([n * 2, threadId]);
});`;

const PLENTY: TaskLimits = { longest: 60_000, mostMemory: Number.POSITIVE_INFINITY };

function poolOf(size: number, limits = PLENTY) {
  let started = 0;
  const start = () => {
    started++;
    return new Worker(doubling, { eval: true });
  };
  return { pool: createWorkerPool<number, [number, number]>(start, size, limits), threads: () => started };
}

test('tasks are shared among at most the given number of threads', async () => {
  const { pool, threads } = poolOf(2);
  const answers = await Promise.all([1, 2, 3, 4, 5].map(pool.run));
  expect(answers.map(([answer]) => answer)).toEqual([2, 4, 6, 8, 10]);
  expect(threads()).toBe(2);
  await pool.close();
});

test('a thread starts only when no other thread is free for a task', async () => {
  const { pool, threads } = poolOf(4);
  expect(threads()).toBe(0);
  await pool.run(1);
  await pool.run(2);
  expect(threads()).toBe(1);
  await pool.close();
});

test('when a thread dies, only its own task fails', async () => {
  const { pool, threads } = poolOf(1);
  const answers = await Promise.allSettled([1, 13, 2, 14, 3].map(pool.run));
  expect(answers.map((one) => (one.status === 'fulfilled' ? one.value[0] : one.reason.message))).toEqual([
    2,
    'unlucky',
    4,
    'its thread has ended',
    6,
  ]);
  expect(threads()).toBe(3);
  await pool.close();
});

test.each([
  ['takes longer than a task may', { ...PLENTY, longest: 300 }, 'takes too long'],
  ['makes the process larger than it may be', { ...PLENTY, mostMemory: 1 }, 'needs too much memory'],
])(
  'a task that %s is ended with its thread, and the next task gets a new thread',
  async (_name, limits, says) => {
    const { pool, threads } = poolOf(1, limits);
    const endless = pool.run(15);
    await expect(endless).rejects.toThrow(says);
    await expect(endless).rejects.toBeInstanceOf(FileFault);
    await pool.run(1).catch(() => undefined);
    expect(threads()).toBe(2);
    await pool.close();
  },
);

test('closing the pool ends the tasks under way and the tasks that wait', async () => {
  const { pool } = poolOf(1);
  const tasks = Promise.allSettled([15, 1].map(pool.run));
  await pool.close();
  expect((await tasks).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  await expect(pool.run(1)).rejects.toThrow('the pool is closed');
});
