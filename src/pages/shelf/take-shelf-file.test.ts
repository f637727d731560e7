import 'fake-indexeddb/auto';
import { beforeEach, expect, test, vi } from 'vitest';
import { writeHead, writeText } from '../../host/files/shelf-file.ts';
import {
  changeText,
  deleteTexts,
  loadWhole,
  putTexts,
  readShelf,
  type WholeShelfText,
} from '../../host/store/shelf-store.ts';
import { addToShelf } from './add-to-shelf.ts';
import { packShelf, takeShelfFile } from './take-shelf-file.ts';

vi.mock('../../host/browser.ts', () => ({ browser: {} }));

const { signal } = new AbortController();

function textOf(n: number): WholeShelfText {
  return {
    id: `t${n}`,
    title: `Day ${n} in Tarn Quay`,
    url: n % 2 ? null : `https://post.example/${n}`,
    byline: null,
    date: null,
    shelved: n,
    tags: ['harbour'],
    notes: `note ${n}`,
    words: [
      ['day', n + 1],
      ['the', 2],
    ],
    skipped: n,
    text: n % 3 ? null : `The text of day ${n}.`,
  };
}

async function whole(): Promise<(WholeShelfText | undefined)[]> {
  const found = [];
  for await (const slice of readShelf()) {
    for (const { id } of slice) found.push(await loadWhole(id));
  }
  return found;
}

beforeEach(async () => {
  for await (const slice of readShelf()) await deleteTexts(slice.map(({ id }) => id));
});

test('saved, deleted and opened again, the shelf is what it was; opened twice, nothing is doubled', async () => {
  await putTexts(Array.from({ length: 450 }, (_, n) => textOf(n)));
  const before = await whole();
  const file = await packShelf(null, signal);
  await deleteTexts(before.map((text) => text!.id));
  expect(await whole()).toEqual([]);
  expect(await takeShelfFile(file, signal)).toEqual({ added: 450, there: 0 });
  expect(await whole()).toEqual(before);
  expect(await takeShelfFile(file, signal)).toEqual({ added: 0, there: 450 });
  expect(await whole()).toEqual(before);
});

test('a part of the shelf is saved by ids', async () => {
  await putTexts([textOf(0), textOf(1), textOf(2)]);
  const file = await packShelf(new Set(['t1']), signal);
  await deleteTexts(['t0', 't1', 't2']);
  await takeShelfFile(file, signal);
  expect(await whole()).toEqual([textOf(1)]);
});

test('a text changed since is kept as it is, and the one of the file stands beside it, once', async () => {
  await putTexts([textOf(0)]);
  const file = await packShelf(null, signal);
  await changeText('t0', () => ({ notes: 'a new note' }));
  expect(await takeShelfFile(file, signal)).toEqual({ added: 1, there: 0 });
  expect(await takeShelfFile(file, signal)).toEqual({ added: 0, there: 1 });
  expect((await whole()).map((text) => text!.notes).toSorted()).toEqual(['a new note', 'note 0']);
});

test('two texts of a file under one id are both taken', async () => {
  const file = new Blob([writeHead(2), writeText(textOf(0)), writeText({ ...textOf(1), id: 't0' })]);
  expect(await takeShelfFile(file, signal)).toEqual({ added: 2, there: 0 });
  expect((await whole()).map((text) => text!.title).toSorted()).toEqual([textOf(0).title, textOf(1).title]);
});

test('of a file that is damaged in part, nothing is taken, however far in', async () => {
  const texts = Array.from({ length: 250 }, (_, n) => writeText(textOf(n)));
  const file = new Blob([writeHead(251), ...texts, '{"id":"t1"}\n']);
  await expect(takeShelfFile(file, signal)).rejects.toThrow(/Text 251 of this file is damaged/);
  expect(await whole()).toEqual([]);
});

test('a text is put on the shelf once, and gets tags and text that come later', async () => {
  const { id: _id, shelved: _shelved, tags: _tags, notes: _notes, ...vetted } = textOf(1);
  const { id, outcome } = await addToShelf(vetted, ['boats']);
  expect(outcome).toBe('shelved');
  const again = { ...vetted, words: vetted.words.toReversed(), text: 'Its text.' };
  expect(await addToShelf(again, ['Boats', 'week 12'])).toEqual({ id, outcome: 'there' });
  expect(await loadWhole(id)).toMatchObject({ tags: ['boats', 'week 12'], text: 'Its text.' });
  expect(await addToShelf(vetted)).toEqual({ id, outcome: 'there' });
  expect((await loadWhole(id))?.text).toBe('Its text.');
  const other = await addToShelf({ ...vetted, words: [['day', 9]] });
  expect(other.outcome).toBe('shelved');
});
