import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import {
  climbText,
  compileGroup,
  createClimber,
  createJudge,
  GroupError,
  importSequence,
  markReading,
  parseGroup,
  parseSequence,
  tokenize,
  toSequence,
  vet,
} from '../../src/analyze/index.ts';
import type { Group, Sequence } from '../../src/analyze/types.ts';
import { vetLine } from '../../src/cli/vet-line.ts';
import { EverythingFileError, readEverything } from '../../src/host/files/everything-file.ts';
import { PassageFileError, readPassages } from '../../src/host/files/passage-file.ts';
import { readShareFile, ShareError } from '../../src/host/files/share-file.ts';
import { readShelfFile, ShelfFileError } from '../../src/host/files/shelf-file.ts';
import { takeIn } from '../../src/host/files/take-in.ts';
import { readWordreachFile, WordreachFileError } from '../../src/host/files/wordreach-file.ts';
import { answer } from '../../src/host/page-talk/messages.ts';
import {
  changeChosen,
  chosenGroup,
  findGroup,
  freeGroupId,
  loadGroups,
} from '../../src/host/store/groups-store.ts';
import { keepImportChoice, loadImportChoices } from '../../src/host/store/import-choices.ts';
import { loadLesson } from '../../src/host/store/lessons-store.ts';
import { loadLook } from '../../src/host/store/look.ts';
import { loadPassages } from '../../src/host/store/passages-store.ts';
import { loadSchoolPreset } from '../../src/host/store/school-preset.ts';
import {
  changeSequences,
  findSequence,
  freeSequenceId,
  loadSequences,
} from '../../src/host/store/sequences-store.ts';
import { loadMark } from '../../src/host/store/shelf-mark.ts';
import { loadSeen, newsSince, noteGroups } from '../../src/host/store/shelf-seen.ts';
import { readShelf } from '../../src/host/store/shelf-store.ts';
import { StorageFault } from '../../src/host/store/store-item.ts';
import { reconcile } from '../../src/host/sync/reconcile.ts';
import { loadSyncState } from '../../src/host/sync/sync-state.ts';
import { makePart, parts, planOf, startPlan } from '../../src/lesson/index.ts';
import { findDraft } from '../../src/pages/desk/draft.ts';
import { loadReportText, ReportFault, type ReportText } from '../../src/pages/report/report-text.ts';
import type { Passage } from '../../src/passage/kept/passage.ts';
import { parseChoices } from '../../src/passage/print/sheet-choices.ts';
import { setVersion, versionFor } from '../../src/passage/versions.ts';
import { createSwapper } from '../../src/swap/create-swapper.ts';
import { openSwaps } from '../../src/swap/open-swaps.ts';
import phrases from '../../src/swap/phrase-swaps.json' with { type: 'json' };
import { listenForFaults } from '../fakes/listen-for-faults.ts';
import { kept } from '../fakes/local-storage.ts';
import { withName } from '../fakes/with-name.ts';
import { lessonInput } from '../lesson/load-lesson.ts';
import { loadAnalyzer } from '../load-analyzer.ts';
import { loadSavedFile, loadStoredShapes } from '../stored/stored-shapes.ts';

/**
 * A name that every object has is treated like any other name. The tests put `constructor` in place of every id, name,
 * word, pattern and key of everything that is read. Each reader takes the name as a text or refuses it with a sentence
 * of its own.
 */
vi.mock('../../src/host/browser.ts', () => import('../fakes/local-storage.ts'));
beforeEach(() => kept.clear());

const NAMES = Object.getOwnPropertyNames(Object.prototype);
const shapes = loadStoredShapes(1).local;

const NAMED = NAMES.map((name) => [name] as const);

/**
 * Four of the twelve names, one of each kind: a function, the prototype itself, a method that returns a text, and a
 * method that returns true or false.
 */
const KINDS = ['constructor', '__proto__', 'toString', 'hasOwnProperty'].map((name) => [name] as const);

describe.each(KINDS)('%s', (name) => {
  test('in any place of the storage: all of it is read, and the chosen group can be changed', async () => {
    for (const [key, value] of Object.entries(shapes))
      for (const changed of withName(value, name)) {
        kept.clear();
        for (const [other, stored] of Object.entries(shapes)) kept.set(other, stored);
        kept.set(key, changed);
        await expectReadable();
      }
  }, 60_000);

  test('in any place of the databases: unreadable items are left out, and the other items are read', async () => {
    const told = listenForFaults();
    const { desk, shelf } = loadStoredShapes(1);
    const [passages, texts] = await Promise.all([openDesk(), openShelf()]);
    for (const changed of withName(desk.passages[0], name)) {
      for (const passage of [changed as object, { ...desk.passages[1], id: 'whole' }])
        if (typeof (passage as Passage).id === 'string') await passages.put('passages', passage);
      const read = await loadPassages();
      read.forEach(expectPassage);
      expect(read.some(({ id }) => id === 'whole')).toBe(true);
      await passages.clear('passages');
    }
    for (const changed of withName(shelf.texts[0], name)) {
      for (const text of [changed as (typeof shelf.texts)[0], { ...shelf.texts[1]!, id: 'whole' }])
        if (typeof text.id === 'string')
          await texts.put(
            'texts',
            Array.isArray(text.counts) ? { ...text, counts: Uint32Array.from(text.counts) } : text,
          );
      const read = [];
      for await (const slice of readShelf(1)) read.push(...slice);
      for (const { words } of read) for (const [word] of words) expect(typeof word).toBe('string');
      expect(read.some(({ id }) => id === 'whole')).toBe(true);
      await texts.clear('texts');
    }
    passages.close();
    texts.close();
    for (const fault of await told()) expect(fault).toBeInstanceOf(StorageFault);
  }, 60_000);

  test('in any place of a file: the file is read, or refused with a sentence', async () => {
    for (const changed of withName(JSON.parse(loadSavedFile('share-1.json')), name))
      expectRead(() => takeInAll(readShareFile(JSON.stringify(changed))), ShareError);
    for (const changed of withName(JSON.parse(loadSavedFile('passages-1.json')), name))
      expectRead(() => readPassages(JSON.stringify(changed)).forEach(expectPassage), PassageFileError);
    await expectLines('shelf-1.jsonl', name, readShelfFile, ShelfFileError);
    await expectLines('everything-1.jsonl', name, readEverything, EverythingFileError);
    for (const changed of withName({ id: 'tide', ...loadStoredShapes(1).desk.passages[0] }, name)) {
      session.set(`draft ${name}`, JSON.stringify(changed));
      const draft = findDraft(name);
      if (draft) expectPassage(draft);
    }
    for (const changed of withName(reported, name)) {
      session.set('report-tab-7', JSON.stringify(changed));
      const text = await loadReportText('#tab/7').catch((error: unknown) => error);
      if (!(text instanceof ReportFault)) expect(typeof (text as ReportText).title).toBe('string');
    }
    for (const changed of withName({ id: 1, text: 'A net.', html: '<p>A net.' }, name)) {
      const { json } = vetLine(JSON.stringify(changed), 1, () => []);
      expect(Object.keys(JSON.parse(json) as object)).toContain('id');
    }
    for (const changed of withName({ paper: 'a4', font: 'book', gaps: 'wide', size: 18 }, name))
      expect(typeof parseChoices(changed).paper).toBe('string');
  }, 60_000);
});

describe.each(NAMED)('%s', (name) => {
  test('as a key in a file of everything: the line is refused', async () => {
    const file = `{"wordreach-everything":1,"items":1}\n{"stored":"${name}","value":{}}\n`;
    await expect(readAll(readEverything(new Blob([file])))).rejects.toThrow(EverythingFileError);
    const one = `{"wordreach-file":1,"whole":true,"items":1}\n{"stored":"${name}","value":{}}\n`;
    await expect(readAll(readWordreachFile(new Blob([one])))).rejects.toThrow(WordreachFileError);
  });

  test('works as the id of a group, a sequence, a lesson and a version', async () => {
    const groups = Object.fromEntries([[name, group({ sequence: name })]]);
    kept.set('groups', { version: 1, chosen: name, groups });
    const stored = { ...sequence, id: name };
    kept.set('sequences', { version: 1, sequences: Object.fromEntries([[name, stored]]) });
    const [all, sequences] = [await loadGroups(), await loadSequences()];
    expect([all.chosen, chosenGroup(all).name, findSequence(sequences, name)]).toEqual([
      name,
      'Herons',
      stored,
    ]);
    await changeChosen((now) => ({ ...now, name: 'Plovers' }));
    expect(findGroup(await loadGroups(), name)?.name).toBe('Plovers');
    expect(await loadLesson({ group: name, passage: name })).toBe(null);
    expect(planOf(startPlan(1), { id: name }).chosen).toEqual({});
    expectPassage({ title: 'A net', source, original: 'A net.', versions: {} });
    const versions = Object.fromEntries([
      [name, { text: 'Bram.', storyWords: [{ word: name, meaning: name }] }],
    ]);
    const passage = { title: name, source, original: name, versions };
    const file = JSON.stringify({ 'wordreach-passages': 1, passages: [passage] });
    expect(readPassages(file)).toEqual([passage]);
    expect(Object.keys(readPassages(file)[0]!.versions)).toEqual([name]);
    expect(reconcile(Object.fromEntries([[name, 'a']]), {}, {}, 1).toThere).toEqual(
      Object.fromEntries([[name, { changed: 1, text: 'a' }]]),
    );
  });

  test('as an unknown id: nothing is found', async () => {
    const [all, sequences] = [await loadGroups(), await loadSequences()];
    expect(findGroup(all, name)).toBe(null);
    expect(findSequence(sequences, name)).toBe(null);
    expect(newsSince({}, name, chosenGroup(all))).toBe(null);
    expect(answer({ judge: () => null } as never, { to: 'background', ask: name, given: 1 }, {})).toBe(
      undefined,
    );
  });

  test('as the name of a new group and sequence: the group and the sequence can be saved and found', async () => {
    const id = freeSequenceId(name, await loadSequences());
    await changeSequences((own) => ({ ...own, [id]: { ...sequence, id, name } }));
    expect(findSequence(await loadSequences(), id)?.name).toBe(name);
    expect(freeGroupId(await loadGroups())).toBe('group-1');
    const taken = takeIn(
      { groups: [group({ name, sequence: name })], sequences: [{ ...sequence, id: name, name }] },
      { groups: await loadGroups(), sequences: await loadSequences() },
    );
    expect(Object.values(taken.groups).map((one) => one.name)).toEqual([name]);
  });

  test('as an item of a pasted sequence, and as the choice about the item: both are accepted', async () => {
    const pasted = `Step 1: ${name}, ai, ${name}: m\nStep 2: /${name}/ as in ${name}, -${name}, ${name}-`;
    const made = toSequence(importSequence(pasted), { id: name, name, source: name, licence: name });
    if (made.steps.length > 0) parseSequence(made);
    await keepImportChoice(name, [name]);
    const choices = await loadImportChoices();
    expect(Object.hasOwn(choices, name)).toBe(true);
    importSequence(pasted, choices);
    await keepImportChoice(name, null);
    expect(Object.hasOwn(await loadImportChoices(), name)).toBe(false);
  });

  test('as a pattern: the file is refused with its own error', () => {
    expect(() => parseGroup({ name, alsoTaught: [name] })).toThrow(GroupError);
    expect(() => parseSequence({ ...sequence, steps: [{ teaches: [name], bySight: [] }] })).toThrow(
      GroupError,
    );
  });

  test('as a word: the word is analysed, judged, climbed, swapped, and taught in a lesson', () => {
    const known = parseGroup({ name, bySight: [name], names: [name], skip: [name] });
    for (const given of [known, group({})]) {
      const judge = createJudge(analyzer, compileGroup(given, null));
      for (const word of [name, name.toLowerCase(), `${name}'s`, `${name}s`, `un${name}`]) {
        expect(judge(word).fault ?? null).toBe(null);
        expect(analyzer.analyze(word).readings.length).toBeGreaterThan(0);
      }
    }
    const text = `The ${name} will read the lead ${name}. He ${name} it.`;
    const words = tokenize(text).map(({ key }) => [key, 1] as const);
    const judge = createJudge(analyzer, compileGroup(known, sequence));
    expect(vet({ words, skipped: 0 }, judge).faults).toEqual([]);
    climbText({ words, skipped: 0 }, createClimber(analyzer, known, sequence));
    expect(markReading(text, 4, 4 + name.length, name)).toBe(name);
    swapper.findSwaps(text, 4, 4 + name.length, { reach: () => 'reads' });
    const input = lessonInput('steady-steps', 24, { bySight: [name], names: [name] }, { title: name, text });
    for (const part of parts) expect(makePart(part, startPlan(3), input).id).toBe(part.id);
  });
});

test('a school policy with names such as constructor is read', async () => {
  kept.set('managed', {
    sequence: 'constructor',
    sequences: [{ ...sequence, id: 'constructor' }, '__proto__'],
  });
  expect((await loadSchoolPreset()).sequences.map(({ id }) => id)).toEqual(['constructor']);
  expect((await loadSequences()).preset).toBe('constructor');
});

const analyzer = loadAnalyzer();
const swapper = createSwapper(
  openSwaps(readFileSync(new URL('../../public/data/swaps.bin', import.meta.url))),
  phrases,
);
const session = new Map<string, string>();
const area = {
  getItem: (key: string) => session.get(key) ?? null,
  setItem: (key: string, value: string) => void session.set(key, value),
};
vi.stubGlobal('localStorage', area);
vi.stubGlobal('sessionStorage', area);
const reported: ReportText = {
  title: 'A net',
  source: 'Wilma Falk',
  words: [['net', 1]],
  skipped: 0,
  groupId: 'herons',
  adapted: false,
  storyWords: ['quay'],
};
const source = { url: null, byline: null, date: null };
const sequence: Sequence = {
  id: 'quay-steps',
  name: 'Quay steps',
  source: 'Tarn Quay School',
  licence: 'own',
  steps: [{ teaches: ['ai'], bySight: [] }],
};

function group(given: Partial<Group>): Group {
  return { ...parseGroup({ name: 'Herons', sequence: null }), step: 1, ...given };
}

async function expectReadable(): Promise<void> {
  const [groups, sequences] = [await loadGroups(), await loadSequences()];
  const chosen = chosenGroup(groups);
  expect(findGroup(groups, groups.chosen)).toBe(chosen);
  expect(parseGroup(chosen)).toEqual(chosen);
  compileGroup({ ...chosen, step: 0 }, findSequence(sequences, chosen.sequence));
  await changeChosen((now) => ({ ...now, name: 'Changed' }));
  expect(chosenGroup(await loadGroups()).name).toBe('Changed');
  await Promise.all([loadImportChoices(), loadLook(), loadMark(), loadSyncState()]);
  const plan = await loadLesson({ group: 'group-1', passage: null });
  if (plan) for (const part of parts) expect(Number.isSafeInteger(planOf(plan, part).seed)).toBe(true);
  for (const [id, one] of Object.entries(groups.groups)) newsSince(await loadSeen(), id, one);
  await noteGroups(groups);
}

/** Opens the databases that the stores have made for themselves. */
async function openDesk() {
  await loadPassages();
  return openDB('desk');
}

async function openShelf() {
  await readShelf().next();
  return openDB('shelf');
}

async function takeInAll(shared: ReturnType<typeof readShareFile>): Promise<void> {
  takeIn(shared, { groups: await loadGroups(), sequences: await loadSequences() });
}

function expectPassage(read: Omit<Passage, 'id' | 'rev' | 'saved'>): void {
  const passage = { ...read, id: 'a', rev: 1, saved: 1 };
  for (const name of NAMES) {
    expect(typeof versionFor(passage, name).text).toBe('string');
    const changed = setVersion(passage, name, (version) => ({ ...version, text: 'Bram.' }));
    expect(versionFor(changed, name).text).toBe('Bram.');
  }
}

function expectRead(read: () => unknown, fault: new (...args: never[]) => Error): void {
  try {
    read();
  } catch (error) {
    if (!(error instanceof fault)) throw error;
  }
}

async function expectLines(
  file: string,
  name: string,
  read: (file: Blob) => AsyncIterable<unknown>,
  fault: new (...args: never[]) => Error,
): Promise<void> {
  const lines = loadSavedFile(file).trimEnd().split('\n');
  for (const [i, line] of lines.entries())
    for (const changed of withName(JSON.parse(line), name)) {
      const text = lines.with(i, JSON.stringify(changed)).join('\n');
      try {
        await readAll(read(new Blob([text])));
      } catch (error) {
        if (!(error instanceof fault)) throw error;
      }
    }
}

async function readAll(items: AsyncIterable<unknown>): Promise<void> {
  for await (const item of items) expect(typeof item).toBe('object');
}
