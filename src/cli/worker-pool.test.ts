import { Worker } from 'node:worker_threads';
import { expect, test } from 'vitest';
import { createWorkerPool } from './worker-pool.ts';

/** Doubles a number; dies over 13, in silence over 14, and is at 15 for ever. */
const doubling = `
const { parentPort, threadId } = require('node:worker_threads');
parentPort.on('message', (n) => {
  if (n === 13) throw new Error('unlucky');
  if (n === 14) process.exit(3);
  if (n !== 15) parentPort.postMessage([n * 2, threadId]);
});`;

function poolOf(size: number) {
  let started = 0;
  const start = () => {
    started++;
    return new Worker(doubling, { eval: true });
  };
  return { pool: createWorkerPool<number, [number, number]>(start, size), threads: () => started };
}

test('tasks are shared by no more threads than there may be', async () => {
  const { pool, threads } = poolOf(2);
  const answers = await Promise.all([1, 2, 3, 4, 5].map(pool.run));
  expect(answers.map(([answer]) => answer)).toEqual([2, 4, 6, 8, 10]);
  expect(threads()).toBe(2);
  await pool.close();
});

test('a thread starts only when there is work for it', async () => {
  const { pool, threads } = poolOf(4);
  expect(threads()).toBe(0);
  await pool.run(1);
  await pool.run(2);
  expect(threads()).toBe(1);
  await pool.close();
});

test('a thread that dies takes only its own task with it', async () => {
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

test('closing ends what is under way and what waits', async () => {
  const { pool } = poolOf(1);
  const tasks = Promise.allSettled([15, 1].map(pool.run));
  await pool.close();
  expect((await tasks).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  await expect(pool.run(1)).rejects.toThrow('the pool is closed');
});
