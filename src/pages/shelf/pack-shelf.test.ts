import 'fake-indexeddb/auto';
import { beforeEach, expect, test, vi } from 'vitest';
import { takeFile } from '../../host/files/take-file.ts';
import { beginFile } from '../../host/files/wordreach-file.ts';
import {
  changeText,
  deleteTexts,
  loadWhole,
  putTexts,
  readShelf,
  type WholeShelfText,
} from '../../host/store/shelf-store.ts';
import { addToShelf } from './add-to-shelf.ts';
import { packShelf } from './pack-shelf.ts';

vi.mock('../../host/browser.ts', () => import('../../../tests/fakes/local-storage.ts'));

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

function fileOf(texts: readonly WholeShelfText[]): Blob {
  const file = beginFile({ whole: false });
  file.add(texts.map((text) => ({ text })));
  return file.end();
}

/** Returns how many texts were added. */
async function take(file: Blob): Promise<number> {
  return (await takeFile(file, 'add', signal)).added.texts;
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

test('a shelf that is saved, deleted and opened again is unchanged, even if the file is opened twice', async () => {
  await putTexts(Array.from({ length: 450 }, (_, n) => textOf(n)));
  const before = await whole();
  const file = await packShelf(null, signal);
  await deleteTexts(before.map((text) => text!.id));
  expect(await whole()).toEqual([]);
  expect(await take(file)).toBe(450);
  expect(await whole()).toEqual(before);
  expect(await take(file)).toBe(0);
  expect(await whole()).toEqual(before);
});

test('a part of the shelf can be saved by the ids of its texts', async () => {
  await putTexts([textOf(0), textOf(1), textOf(2)]);
  const file = await packShelf(new Set(['t1']), signal);
  await deleteTexts(['t0', 't1', 't2']);
  await take(file);
  expect(await whole()).toEqual([textOf(1)]);
});

test('a text changed after the save is kept, and the file’s text is added beside it once', async () => {
  await putTexts([textOf(0)]);
  const file = await packShelf(null, signal);
  await changeText('t0', () => ({ notes: 'a new note' }));
  expect(await take(file)).toBe(1);
  expect(await take(file)).toBe(0);
  expect((await whole()).map((text) => text!.notes).toSorted()).toEqual(['a new note', 'note 0']);
});

test('merging replaces a text changed after the save with the file’s text, and undo restores it', async () => {
  await putTexts([textOf(0)]);
  const file = await packShelf(null, signal);
  await changeText('t0', () => ({ notes: 'a new note' }));
  const { changed, undo } = await takeFile(file, 'merge', signal);
  expect(changed.texts).toBe(1);
  expect((await whole()).map((text) => text!.notes)).toEqual(['note 0']);
  await undo();
  expect((await whole()).map((text) => text!.notes)).toEqual(['a new note']);
});

test('two texts with the same id in one file are both added', async () => {
  expect(await take(fileOf([textOf(0), { ...textOf(1), id: 't0' }]))).toBe(2);
  expect((await whole()).map((text) => text!.title).toSorted()).toEqual([textOf(0).title, textOf(1).title]);
});

test('no text is added from a file that is damaged anywhere', async () => {
  const texts = Array.from({ length: 250 }, (_, n) => textOf(n));
  const file = fileOf([...texts, { id: 't1' } as WholeShelfText]);
  await expect(take(file)).rejects.toThrow(/Line 252 of this file is damaged/);
  expect(await whole()).toEqual([]);
});

test('a text is put on the shelf once, and gets tags and a full text that are added later', async () => {
  const { id: _id, shelved: _shelved, tags: _tags, notes: _notes, ...vetted } = textOf(1);
  const { id, outcome } = await addToShelf(vetted, ['boats']);
  expect(outcome).toBe('shelved');
  const again = { ...vetted, words: vetted.words.toReversed(), text: 'Its text.' };
  expect(await addToShelf(again, ['Boats', 'week 12'])).toMatchObject({ id, outcome: 'there' });
  expect(await loadWhole(id)).toMatchObject({ tags: ['boats', 'week 12'], text: 'Its text.' });
  expect(await addToShelf(vetted)).toMatchObject({ id, outcome: 'there' });
  expect((await loadWhole(id))?.text).toBe('Its text.');
  const other = await addToShelf({ ...vetted, words: [['day', 9]] });
  expect(other.outcome).toBe('shelved');
  await other.undo?.();
  expect(await loadWhole(other.id)).toBeUndefined();
});
