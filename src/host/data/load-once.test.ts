import { expect, test } from 'vitest';
import { loadOnce } from './load-once.ts';

test('loaded data is kept until it is forgotten, and a failure is not kept', async () => {
  let times = 0;
  const load = loadOnce(async () => {
    times++;
    if (times === 1) throw new Error('offline');
    return times;
  });
  await expect(Promise.all([load(), load()])).rejects.toThrow('offline');
  expect(await Promise.all([load(), load()])).toEqual([2, 2]);
  load.forget();
  expect(await load()).toBe(3);
});

test('a load that fails late does not discard the newer load', async () => {
  const failing: ((error: Error) => void)[] = [];
  const load = loadOnce(() => new Promise<number>((_, reject) => failing.push(reject)));
  const first = load();
  load.forget();
  const second = load();
  failing[0]!(new Error('late'));
  await expect(first).rejects.toThrow('late');
  expect(load()).toBe(second);
});
