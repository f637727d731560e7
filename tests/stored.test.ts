import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { accentOf } from '../src/analyze/index.ts';
import { EverythingFileError } from '../src/host/files/everything-file.ts';
import { packEverything, restoreEverything } from '../src/host/files/everything-store.ts';
import { readPassages } from '../src/host/files/passage-file.ts';
import { readShareFile } from '../src/host/files/share-file.ts';
import { readShelfFile } from '../src/host/files/shelf-file.ts';
import { lookIntoFile, takeFile } from '../src/host/files/take-file.ts';
import { beginFile } from '../src/host/files/wordreach-file.ts';
import { changeGroups, loadGroups } from '../src/host/store/groups-store.ts';
import { loadImportChoices } from '../src/host/store/import-choices.ts';
import { loadLesson } from '../src/host/store/lessons-store.ts';
import { loadLook } from '../src/host/store/look.ts';
import { deletePassage, loadPassage, loadPassages } from '../src/host/store/passages-store.ts';
import { loadSequences } from '../src/host/store/sequences-store.ts';
import { loadMark } from '../src/host/store/shelf-mark.ts';
import { loadSeen } from '../src/host/store/shelf-seen.ts';
import { deleteTexts, loadWhole, readShelf } from '../src/host/store/shelf-store.ts';
import { loadSyncState } from '../src/host/sync/sync-state.ts';
import { listenForFaults } from './fakes/listen-for-faults.ts';
import { kept } from './fakes/local-storage.ts';
import { loadSavedFile, loadStoredShapes } from './stored/stored-shapes.ts';

vi.mock('../src/host/browser.ts', () => import('./fakes/local-storage.ts'));

const shapes = loadStoredShapes(1);
const { signal } = new AbortController();

/** Stores the shapes in the places where the version that wrote them stored them. */
beforeAll(async () => {
  for (const [key, value] of Object.entries(shapes.local)) kept.set(key, value);
  const desk = await openDB('desk', shapes.desk.version, {
    upgrade: (db) => void db.createObjectStore('passages', { keyPath: 'id' }),
  });
  for (const passage of shapes.desk.passages) await desk.put('passages', passage);
  desk.close();
  const shelf = await openDB('shelf', shapes.shelf.version, {
    upgrade: (db) => {
      const texts = db.createObjectStore('texts', { keyPath: 'id' });
      texts.createIndex('title', 'title');
      texts.createIndex('url', 'url');
      db.createObjectStore('kept');
    },
  });
  for (const text of shapes.shelf.texts)
    await shelf.put('texts', { ...text, counts: Uint32Array.from(text.counts) });
  for (const [id, text] of Object.entries(shapes.shelf.kept)) await shelf.put('kept', text, id);
  shelf.close();
});

describe('the data that version 1 stored is read completely:', () => {
  test('groups, the chosen group, and unreadable groups in their stored form', async () => {
    const { chosen, groups, unread } = await loadGroups();
    const { 'group-9': later, ...readable } = (shapes.local.groups as { groups: Record<string, object> })
      .groups;
    expect(chosen).toBe('group-1');
    expect(groups).toEqual(readable);
    expect(unread).toEqual({ 'group-9': later });
  });

  test('sequences, and the teacher’s choices about pasted sequences', async () => {
    expect((await loadSequences()).own).toEqual((shapes.local.sequences as { sequences: object }).sequences);
    expect(await loadImportChoices()).toEqual(shapes.local['import-choices']);
  });

  test('lessons, with their pinned parts', async () => {
    expect(await loadLesson({ group: 'group-1', passage: null })).toEqual(shapes.local['lesson/group-1/']);
    const passage = '6a0f7c1e-0d5b-4f7e-9a51-2f1f0f1d7a10';
    expect(await loadLesson({ group: 'herons', passage })).toEqual({ seed: 40, parts: {} });
  });

  test('the look of marks, the mark and the seen steps of the shelf, and the state of the copies', async () => {
    expect(await loadLook()).toBe('underline');
    expect(await loadMark()).toBe(97);
    expect(await loadSeen()).toEqual(shapes.local['shelf-seen']);
    expect(await loadSyncState()).toEqual(shapes.local['sync-state']);
  });

  test('passages with their versions', async () => {
    expect(await loadPassages()).toEqual(shapes.desk.passages);
  });

  test('also beside a damaged passage and text, which stay unchanged and are reported once', async () => {
    const [desk, shelf] = await Promise.all([openDB('desk'), openDB('shelf')]);
    const passage = { ...shapes.desk.passages[0], id: 'torn', versions: 7 };
    const text = { ...shapes.shelf.texts[0]!, id: 'torn', counts: 'none' };
    const told = listenForFaults();
    await Promise.all([desk.put('passages', passage), shelf.put('texts', text)]);
    for (let times = 0; times < 2; times++) {
      expect(await loadPassages()).toEqual(shapes.desk.passages);
      const ids = [];
      for await (const slice of readShelf(1)) ids.push(...slice.map(({ id }) => id));
      expect(ids).toEqual(shapes.shelf.texts.map(({ id }) => id));
    }
    expect(await loadPassage('torn')).toBeUndefined();
    expect(await loadWhole('torn')).toBeUndefined();
    expect((await lookIntoFile(await packEverything(), signal)).counts).toMatchObject({
      passages: 2,
      texts: 2,
    });
    expect((await told()).map(({ message }) => message.slice(0, 24))).toEqual([
      'A passage is not shown, ',
      'A text of the shelf is n',
    ]);
    expect(await Promise.all([desk.get('passages', 'torn'), shelf.get('texts', 'torn')])).toEqual([
      passage,
      text,
    ]);
    await Promise.all([desk.delete('passages', 'torn'), shelf.delete('texts', 'torn')]);
    desk.close();
    shelf.close();
  });

  test('the texts of the shelf', async () => {
    expect(await loadWhole('0e1b7d52-5f4e-4f0c-8d52-0a9f1c3e2b11')).toMatchObject({
      title: 'The ferry is late',
      tags: ['harbour', 'week 12'],
      words: [
        ['ferry', 2],
        ["isn't", 1],
        ['late', 1],
        ['read#1', 1],
        ['the', 3],
      ],
      text: 'The ferry isn’t late. I read it: the ferry, the 9:15.',
    });
    expect((await loadWhole('c7a6f0de-3b1c-4d0a-9e0b-5b8c2d1e0f44'))?.text).toBeNull();
  });
});

describe('a file that version 1 saved is read completely:', () => {
  test('groups and sequences to share', () => {
    const { groups, sequences } = readShareFile(loadSavedFile('share-1.json'));
    expect(groups.map(({ name, names }) => [name, names])).toEqual([
      ['Herons', ['Bram', 'Wilma']],
      ['Terns', []],
    ]);
    expect(sequences).toEqual(
      Object.values((shapes.local.sequences as { sequences: Record<string, object> }).sequences),
    );
  });

  test('groups, as American groups because the file has no accents', () => {
    const { groups } = readShareFile(loadSavedFile('share-1.json'));
    expect(groups.map(accentOf)).toEqual(['american', 'american']);
  });

  test('passages', () => {
    const wanted = (shapes.desk.passages as Record<string, unknown>[]).map(
      ({ id: _, rev: __, saved: ___, ...rest }) => rest,
    );
    expect(readPassages(loadSavedFile('passages-1.json'))).toEqual(wanted);
  });

  test('the shelf', async () => {
    const read = [];
    for await (const text of readShelfFile(new Blob([loadSavedFile('shelf-1.jsonl')]))) read.push(text);
    expect(read).toEqual(await Promise.all(shapes.shelf.texts.map(({ id }) => loadWhole(id))));
  });

  test('everything', async () => {
    const look = await lookIntoFile(new Blob([loadSavedFile('everything-1.jsonl')]), signal);
    expect(look.counts).toEqual({ groups: 3, sequences: 1, presets: 0, lessons: 2, passages: 2, texts: 2 });
    expect(look.whole).toBe(true);
  });

  test('a file of the one kind that Wordreach still saves', async () => {
    const look = await lookIntoFile(new Blob([loadSavedFile('file-1.jsonl')]), signal);
    expect(look).toEqual({
      whole: false,
      counts: { groups: 1, sequences: 1, presets: 1, lessons: 0, passages: 1, texts: 1 },
      clashes: [],
    });
  });

  test.each(['share-1.json', 'passages-1.json', 'shelf-1.jsonl', 'everything-1.jsonl'])(
    '%s, without a clash with the data in the browser',
    async (name) => {
      expect((await lookIntoFile(new Blob([loadSavedFile(name)]), signal)).clashes).toEqual([]);
    },
  );
});

describe('taking in a file', () => {
  const fileOf = async (items: Parameters<ReturnType<typeof beginFile>['add']>[0]): Promise<Blob> => {
    const file = beginFile({ whole: false });
    file.add(items);
    return file.end();
  };
  const stepsOf = async () =>
    Object.values((await loadGroups()).groups).map(({ name, step, names }) => [name, step, names]);

  test('merging updates a group but keeps its names, undo restores the group, and adding adds a second group', async () => {
    const before = await stepsOf();
    const { herons } = (await loadGroups()).groups;
    const file = await fileOf([{ group: { ...herons!, step: 60, names: [] } }]);
    const { clashes } = await lookIntoFile(file, signal);
    expect(clashes.map(({ name, here, file }) => [name, here.step, file.step])).toEqual([
      ['Herons', herons!.step, 60],
    ]);
    const merged = await takeFile(file, 'merge', signal);
    expect([merged.added.groups, merged.changed.groups]).toEqual([0, 1]);
    expect(await stepsOf()).toContainEqual(['Herons', 60, herons!.names]);
    expect(await stepsOf()).toHaveLength(before.length);
    await merged.undo();
    expect(await stepsOf()).toEqual(before);
    const added = await takeFile(file, 'add', signal);
    expect(await stepsOf()).toContainEqual(['Herons 2', 60, []]);
    await added.undo();
    expect(await stepsOf()).toEqual(before);
  });

  test('an item that equals an item in the browser is not added again', async () => {
    const { herons } = (await loadGroups()).groups;
    const [passage] = await loadPassages();
    const file = await fileOf([{ group: { ...herons!, names: [] } }, { passage: passage! }]);
    expect(await lookIntoFile(file, signal)).toMatchObject({ clashes: [] });
    const { added, changed } = await takeFile(file, 'add', signal);
    expect([added, changed].map(({ groups, passages }) => groups + passages)).toEqual([0, 0]);
  });
});

describe('a file with accents is read completely:', () => {
  test('a British and an American group, and the sequence of the British group', () => {
    const text = loadSavedFile('share-2.json');
    const { groups, sequences } = readShareFile(text);
    expect(groups.map(({ name, accent, options }) => [name, accent, options])).toEqual([
      ['Plovers', 'british', { bath: 'cat' }],
      ['Herons', 'american', {}],
    ]);
    expect(sequences.map(({ accent }) => accent)).toEqual(['british']);
  });
});

describe('everything in one file', () => {
  /** Returns all stored data, with the fields of each object in the order of their names. */
  async function readAll(): Promise<string> {
    const texts = [];
    for await (const slice of readShelf()) for (const { id } of slice) texts.push(await loadWhole(id));
    return JSON.stringify([Object.fromEntries(kept), await loadPassages(), texts], (_, value: unknown) =>
      value?.constructor === Object ? Object.fromEntries(Object.entries(value).sort()) : value,
    );
  }

  async function wipe(): Promise<void> {
    kept.clear();
    for (const { id } of await loadPassages()) await deletePassage(id);
    for await (const slice of readShelf()) await deleteTexts(slice.map(({ id }) => id));
  }

  test('restores all data after a wipe, except for the state of the copies', async () => {
    const file = await packEverything();
    kept.delete('sync-state');
    const before = await readAll();
    await wipe();
    expect(await readAll()).not.toBe(before);
    await restoreEverything(file, signal);
    expect(await readAll()).toBe(before);
  });

  test('replaces all stored data, except for the record of backup copies', async () => {
    const file = await packEverything();
    const before = await readAll();
    await changeGroups((now) => ({ ...now, chosen: 'herons' }));
    kept.set('lesson/herons/', { seed: 1, parts: {} });
    await deletePassage('b1d0a8a2-98a5-4c57-8f0c-6b7f2a0f7c33');
    kept.set('sync-state', { on: true, known: {}, left: [] });
    await restoreEverything(file, signal);
    expect(kept.get('sync-state')).toEqual({ on: true, known: {}, left: [] });
    kept.delete('sync-state');
    expect(await readAll()).toBe(before);
  });

  const whole = loadSavedFile('everything-1.jsonl');
  test.each([
    ['is another', '{"wordreach":1,"groups":[]}\n', /does not hold everything/],
    ['is empty', '', /does not hold everything/],
    ['is of a later version', whole.replace(':1,', ':2,'), /later version/],
    ['was cut off at a line', whole.split('\n').slice(0, -2).join('\n'), /incomplete/],
    ['was cut off within a line', whole.slice(0, -9), /Line \d+ of this file is damaged/],
    ['has a passage that is none', whole.replace('"rev":7', '"rev":"7"'), /is damaged/],
    ['has a text that is none', whole.replace('"shelved":17', '"shelved":-17'), /is damaged/],
    ['has a line of something else', whole.replace('{"stored":"look"', '{"other":"look"'), /is damaged/],
  ])('that %s is refused, and nothing is changed', async (_, text, says) => {
    const before = await readAll();
    const fault = await restoreEverything(new Blob([text]), signal).catch((error: unknown) => error);
    expect(fault).toBeInstanceOf(EverythingFileError);
    expect((fault as Error).message).toMatch(says);
    expect(await readAll()).toBe(before);
  });
});
