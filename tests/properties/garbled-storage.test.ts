import fc from 'fast-check';
import { beforeEach, expect, test, vi } from 'vitest';
import { parseGroup, parseSequence } from '../../src/analyze/index.ts';
import { changeGroups, chosenGroup, loadGroups } from '../../src/host/store/groups-store.ts';
import { keepImportChoice, loadImportChoices } from '../../src/host/store/import-choices.ts';
import { loadLesson } from '../../src/host/store/lessons-store.ts';
import { loadLook, loadPrivateMarks } from '../../src/host/store/look.ts';
import { changeSequences, loadSequences } from '../../src/host/store/sequences-store.ts';
import { loadColumns } from '../../src/host/store/shelf-columns.ts';
import { HIGHEST_MARK, LOWEST_MARK, loadMark } from '../../src/host/store/shelf-mark.ts';
import { loadSeen, newsSince, noteGroups } from '../../src/host/store/shelf-seen.ts';
import { loadSyncState } from '../../src/host/sync/sync-state.ts';
import { parsePlan } from '../../src/lesson/index.ts';
import { kept } from '../fakes/local-storage.ts';
import { loadStoredShapes } from '../stored/stored-shapes.ts';

/** Laws of garbled storage: it never blocks anything, and items that can still be read are not lost. */
vi.mock('../../src/host/browser.ts', () => import('../fakes/local-storage.ts'));
beforeEach(() => kept.clear());

const shapes = loadStoredShapes(1).local;
const LESSON = 'lesson/group-1/';

/** Returns every place in a value, as the keys that lead to the place. The value itself comes first. */
function placesIn(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, item]) => placesIn(item, [...path, key]))];
}

function withChange(value: unknown, [key, ...rest]: readonly string[], put: unknown): unknown {
  if (key === undefined) return put;
  const copy = structuredClone(value) as Record<string, unknown>;
  copy[key] = withChange(copy[key], rest, put);
  return copy;
}

/** Makes a value that version 1 stored under a key, with one to three of its places filled with something else. */
function garbled(key: string): fc.Arbitrary<unknown> {
  const anything = fc.oneof(
    fc.jsonValue({ maxDepth: 2 }),
    fc.constantFrom(null, [], {}, '', -1, 0.5, 'ai', 'constructor', '__proto__'),
  );
  const change = fc.tuple(fc.constantFrom(...placesIn(shapes[key])), anything);
  return fc.array(change, { minLength: 1, maxLength: 3 }).map((changes) => {
    let value = structuredClone(shapes[key]);
    for (const [path, put] of changes) {
      try {
        value = withChange(value, path, put);
      } catch {
        // An earlier change removed the place of this change.
      }
    }
    return value;
  });
}

async function holds(key: string, law: (stored: unknown) => Promise<void>): Promise<void> {
  const property = fc.asyncProperty(garbled(key), async (stored) => {
    kept.clear();
    kept.set(key, stored);
    await law(stored);
  });
  await fc.assert(property, { numRuns: 500, seed: 20_261_126 });
}

const entriesIn = (stored: unknown, list: string): [string, unknown][] => {
  const items = (stored as Record<string, unknown> | null)?.[list];
  return typeof items === 'object' && items !== null ? Object.entries(items) : [];
};

test('with garbled groups, a group can be chosen, and a change keeps the unreadable groups', async () => {
  await holds('groups', async (stored) => {
    const groups = await loadGroups();
    expect(chosenGroup(groups).name).toBe(groups.groups[groups.chosen]!.name);
    for (const group of Object.values(groups.groups)) expect(parseGroup(group)).toEqual(group);
    await changeGroups((now) => now);
    const after = Object.fromEntries(entriesIn(kept.get('groups'), 'groups'));
    for (const [id, entry] of entriesIn(stored, 'groups'))
      expect(after[id], id).toEqual(groups.groups[id] ?? entry);
    expect(await loadGroups()).toEqual(groups);
  });
});

test('with garbled sequences, a change keeps the unreadable sequences', async () => {
  await holds('sequences', async (stored) => {
    const { own } = await loadSequences();
    for (const sequence of Object.values(own)) expect(parseSequence(sequence)).toEqual(sequence);
    await changeSequences((now) => now);
    const after = Object.fromEntries(entriesIn(kept.get('sequences'), 'sequences'));
    for (const [id, entry] of entriesIn(stored, 'sequences')) expect(after[id], id).toEqual(own[id] ?? entry);
    expect((await loadSequences()).own).toEqual(own);
  });
});

test('garbled choices about pasted sequences are skipped, and a new choice can be saved', async () => {
  await holds('import-choices', async () => {
    await keepImportChoice('harbour words', ['ar']);
    const choices = await loadImportChoices();
    expect(choices['harbour words']).toEqual(['ar']);
    for (const choice of Object.values(choices))
      expect(
        choice === 'by-sight' || choice === 'ignore' || choice.every((id) => typeof id === 'string'),
      ).toBe(true);
  });
});

test('a garbled lesson is either read as a plan that can be read again unchanged, or made anew', async () => {
  await holds(LESSON, async () => {
    const plan = await loadLesson({ group: 'group-1', passage: null });
    if (plan) expect(parsePlan(structuredClone(plan))).toEqual(plan);
  });
});

test('a garbled look or mark is loaded as a value that can be chosen', async () => {
  await holds('look', async () => expect(['wash', 'underline']).toContain(await loadLook()));
  await holds('private-marks', async () => expect([true, false]).toContain(await loadPrivateMarks()));
  await holds('shelf-mark', async () => {
    const mark = await loadMark();
    expect(mark >= LOWEST_MARK && mark <= HIGHEST_MARK).toBe(true);
  });
});

test('a garbled order of columns is loaded as a list of ids', async () => {
  await holds('shelf-columns', async () => {
    for (const id of await loadColumns()) expect(typeof id).toBe('string');
  });
});

test('garbled records of seen steps still give news for every group, and are repaired when groups are noted', async () => {
  await holds('shelf-seen', async () => {
    const groups = await loadGroups();
    for (const [id, group] of Object.entries(groups.groups)) {
      const since = newsSince(await loadSeen(), id, group);
      if (since !== null) expect(Number.isInteger(since) && since < group.step).toBe(true);
    }
    await noteGroups(groups);
    for (const { sequence, step } of Object.values(await loadSeen()))
      expect([sequence === null || typeof sequence === 'string', Number.isInteger(step)]).toEqual([
        true,
        true,
      ]);
  });
});

test('garbled notes of copies are loaded as on or off, with copies by key and names as text', async () => {
  await holds('sync-state', async () => {
    const { on, known, left } = await loadSyncState();
    expect(typeof on).toBe('boolean');
    for (const copy of Object.values(known))
      expect([Number.isFinite(copy.changed), copy.text === null || typeof copy.text === 'string']).toEqual([
        true,
        true,
      ]);
    for (const name of left) expect(typeof name).toBe('string');
  });
});
