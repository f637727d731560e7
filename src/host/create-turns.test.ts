import { expect, test } from 'vitest';
import { createTurns } from './create-turns.ts';

test('work is done in turn, and a fault nobody waits for is told', async () => {
  const inTurn = createTurns();
  const told: unknown[] = [];
  const hear = (reason: unknown): void => void told.push(reason);
  process.on('unhandledRejection', hear);
  const order: number[] = [];
  const first = inTurn(async () => {
    await Promise.resolve();
    order.push(1);
  });
  void inTurn(async () => {
    throw new Error('full');
  });
  await inTurn(async () => void order.push(2));
  await first;
  await new Promise((resolve) => setImmediate(resolve));
  process.off('unhandledRejection', hear);
  expect(order).toEqual([1, 2]);
  expect(told).toEqual([new Error('full')]);
});
