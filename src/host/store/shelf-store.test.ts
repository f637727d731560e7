import 'fake-indexeddb/auto';
import { beforeEach, expect, test, vi } from 'vitest';
import {
  changeText,
  countTexts,
  deleteTexts,
  findAlike,
  loadTexts,
  loadWhole,
  putTexts,
  readShelf,
  type ShelfNews,
  type WholeShelfText,
  watchShelf,
} from './shelf-store.ts';
import { StorageFault } from './store-item.ts';

vi.mock('../browser.ts', () => ({ browser: {} }));

const ferry: WholeShelfText = {
  id: 'ferry',
  title: 'The ferry is late',
  url: 'https://post.example/ferry',
  byline: 'Wilma Falk',
  date: '25 November 2026',
  shelved: 1_764_000_000_000,
  tags: ['harbour'],
  notes: 'for week 12',
  words: [
    ['the', 3],
    ['ferry', 2],
    ["isn't", 1],
    ['read#1', 1],
  ],
  skipped: 1,
  text: 'The ferry is late.',
};
const net: WholeShelfText = { ...ferry, id: 'net', title: 'A net', url: null, text: null };

beforeEach(async () => {
  await deleteTexts((await all()).map(({ id }) => id));
});

async function all() {
  const found = [];
  for await (const slice of readShelf(2)) found.push(...slice);
  return found;
}

/** Returns everything the database holds, as a search of the disk would find it. */
async function readRaw(): Promise<string> {
  const opening = indexedDB.open('shelf');
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = reject;
  });
  const parts = await Promise.all(
    [...db.objectStoreNames].map(
      (name) =>
        new Promise<unknown>((resolve) => {
          const asking = db.transaction(name).objectStore(name).getAll();
          asking.onsuccess = () => resolve(asking.result);
        }),
    ),
  );
  db.close();
  return JSON.stringify(parts);
}

test('a text is loaded whole, with its words sorted so that their order reveals nothing', async () => {
  await putTexts([ferry]);
  expect(await loadWhole('ferry')).toEqual({
    ...ferry,
    words: [
      ['ferry', 2],
      ["isn't", 1],
      ['read#1', 1],
      ['the', 3],
    ],
  });
  expect(await loadWhole('gone')).toBeUndefined();
});

test('the shelf list has no running text, and a running text that is not to be kept is stored nowhere', async () => {
  await putTexts([ferry, net]);
  const texts = await all();
  expect(texts.map(({ id, isKept }) => [id, isKept])).toEqual([
    ['ferry', true],
    ['net', false],
  ]);
  expect(JSON.stringify(texts)).not.toContain('The ferry is late.');
  await putTexts([{ ...ferry, text: null }]);
  expect(await readRaw()).not.toContain('The ferry is late.');
});

test('a deleted entry leaves nothing in the database', async () => {
  await putTexts([ferry, net]);
  expect(await readRaw()).toContain('The ferry is late.');
  await deleteTexts(['ferry']);
  const raw = await readRaw();
  expect(raw).not.toMatch(/ferry is late|post\.example|week 12.*week 12/);
  expect(raw).toContain('A net');
  expect(await countTexts()).toBe(1);
});

test('many texts are read in slices, each text once', async () => {
  const many = Array.from({ length: 7 }, (_, i) => ({ ...net, id: `t${i}` }));
  await putTexts(many);
  const sizes = [];
  for await (const slice of readShelf(3)) sizes.push(slice.length);
  expect(sizes).toEqual([3, 3, 1]);
  expect((await all()).map(({ id }) => id)).toEqual(many.map(({ id }) => id));
});

test('a change applies to the entry as stored now, so that two windows do not undo each other', async () => {
  await putTexts([ferry]);
  await Promise.all([
    changeText('ferry', ({ tags }) => ({ tags: [...tags, 'boats'] })),
    changeText('ferry', ({ tags }) => ({ tags: [...tags, 'news'] })),
    changeText('gone', () => ({ notes: 'lost' })),
  ]);
  expect((await loadTexts(['ferry', 'gone'])).map(({ tags }) => tags)).toEqual([
    ['harbour', 'boats', 'news'],
  ]);
});

test('two texts are alike if they share title and address', async () => {
  await putTexts([ferry, net, { ...ferry, id: 'other', url: 'https://post.example/other' }]);
  expect((await findAlike(ferry)).map(({ id, text }) => [id, text])).toEqual([['ferry', ferry.text]]);
});

test('every window is told of added and deleted texts until it stops listening', async () => {
  const told: ShelfNews[] = [];
  const controller = new AbortController();
  watchShelf((news) => told.push(news), controller.signal);
  await putTexts([net]);
  await deleteTexts(['net']);
  await vi.waitFor(() =>
    expect(told).toEqual([
      { put: ['net'], deleted: [] },
      { put: [], deleted: ['net'] },
    ]),
  );
  controller.abort();
});

/** The two ways in which browsers refuse when storage is full: at once, and when everything is to be written. */
const refusals: Readonly<Record<string, (store: IDBObjectStore) => void>> = {
  'at once': () => {
    throw new DOMException('full', 'QuotaExceededError');
  },
  'at the end': ({ transaction }) => {
    if (transaction.error) return;
    Object.defineProperty(transaction, 'error', {
      value: new DOMException('full', 'QuotaExceededError'),
    });
    queueMicrotask(() => transaction.abort());
  },
};

test.each(Object.keys(refusals))(
  'when the browser’s storage is full and refuses %s, the error names the next step and nothing is lost',
  async (when) => {
    await putTexts([net]);
    const real = IDBObjectStore.prototype.put;
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...given
    ) {
      refusals[when]!(this);
      return real.apply(this, given);
    });
    await expect(putTexts([ferry])).rejects.toThrow(StorageFault);
    await expect(putTexts([ferry])).rejects.toThrow(/storage is full\. Save the shelf to a file/);
    await expect(changeText('net', () => ({ notes: 'more' }))).rejects.toThrow(/storage is full/);
    put.mockRestore();
    expect((await all()).map(({ id, notes }) => [id, notes])).toEqual([['net', net.notes]]);
  },
);
