import { expect, test } from 'vitest';
import { loadUnreadText } from './load-unread-text.ts';
import type { UnreadTextWatch, WatchUnreadText } from './watch-unread-text.ts';

const found = { foreign: [], drawn: null, written: 3, covered: 2, rows: true, paid: false } as const;

/** Returns a watch whose part fails to load the given number of times, and the number of attempts so far. */
function watchThatFails(times: number) {
  const tried = { count: 0 };
  const watch: UnreadTextWatch = { look: async () => found, forget: () => undefined };
  const load = async (): Promise<WatchUnreadText> => {
    tried.count++;
    if (tried.count <= times) throw new Error('The page takes no scripts.');
    return () => watch;
  };
  return { tried, unread: loadUnreadText(load, () => watch) };
}

test('the part that looks for text that is not read is loaded once', async () => {
  const { tried, unread } = watchThatFails(0);
  unread.load();
  expect(await Promise.all([unread.look(), unread.look()])).toEqual([found, found]);
  expect(tried.count).toBe(1);
});

test('a page whose part cannot be loaded has no known text that is not read, and is asked again later', async () => {
  const { tried, unread } = watchThatFails(1);
  expect(await unread.look()).toMatchObject({ written: 0, covered: 0, rows: false });
  expect(await unread.look()).toEqual(found);
  expect(tried.count).toBe(2);
});
