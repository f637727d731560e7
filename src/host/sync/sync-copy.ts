import { parseGroup, parseSequence } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import { say } from '../../wording/say.ts';
import { browser } from '../browser.ts';
import { changeGroups, findGroup, freeGroupId, freeGroupName, type Groups } from '../store/groups-store.ts';
import { changeSequences, freeSequenceId, loadSequences } from '../store/sequences-store.ts';
import { readItems } from '../store/store-item.ts';
import { GROUPS_KEY, SEQUENCES_KEY } from '../store/watch-stored.ts';
import { packText, unpackText } from './pack-text.ts';
import { type Copy, type Reconciled, reconcile } from './reconcile.ts';
import { changeSyncState, loadSyncState, SYNC_KEY } from './sync-state.ts';

/**
 * The largest item that is copied, in bytes with its key. Browsers take at most 8,192
 * (`storage.sync.QUOTA_BYTES_PER_ITEM`).
 */
const LARGEST_ITEM = 8_000;
const GROUP = 'group:';
const SEQUENCE = 'sequence:';

/** An item as it is stored in the account. */
interface Packed {
  readonly changed: number;
  readonly packed: string | null;
}

/**
 * Keeps groups and own sequences the same in all browsers of one account while the teacher wants that. This browser's
 * own storage always has all of the data. Names of pupils and places are never copied. The background runs this
 * function for as long as the background lives.
 */
export function serveSyncCopy(): void {
  browser.storage.onChanged.addListener((changes, area) => {
    const state = changes[SYNC_KEY] as
      | { oldValue?: { on?: boolean }; newValue?: { on?: boolean } }
      | undefined;
    const turnedOn = state?.newValue?.on === true && state.oldValue?.on !== true;
    if (area === 'sync' || changes[GROUPS_KEY] || changes[SEQUENCES_KEY] || turnedOn) void copyNow();
  });
  void copyNow();
}

/** Compares this browser with the account once, and copies the differences. Calls run one after another. */
export function copyNow(): Promise<void> {
  last = last.then(copyOnce).catch((error: unknown) => {
    console.warn(
      'Wordreach could not copy to the browser account; it tries again at the next change.',
      error,
    );
  });
  return last;
}
let last: Promise<void> = Promise.resolve();

async function copyOnce(): Promise<void> {
  const { on, known } = await loadSyncState();
  if (!on) return;
  const [here, there] = await Promise.all([readHere(), readThere()]);
  // Items that this version cannot read stay as they are in both places, for a version that can.
  const isReadable = ([key]: readonly [string, unknown]): boolean =>
    [here[key], there[key]?.text].every((text) => text == null || canRead(key, text));
  const done = reconcile(
    Object.fromEntries(Object.entries(here).filter(isReadable)),
    Object.fromEntries(Object.entries(there).filter(isReadable)),
    Object.fromEntries(Object.entries(known).filter(isReadable)),
    Date.now(),
  );
  await putHere(done);
  const left = new Set(await putThere(done.toThere));
  const after = new Map([
    ...Object.entries(known).filter((entry) => left.has(entry[0]) || !isReadable(entry)),
    ...Object.entries(done.known).filter(([key]) => !left.has(key)),
  ]);
  const names = [...left].map(
    (key) => (JSON.parse(done.toThere[key]?.text ?? '{}') as { name?: string }).name ?? key,
  );
  await changeSyncState((state) => ({ ...state, known: Object.fromEntries(after), left: names }));
}

/** Returns every item stored in this browser as text, without the names of pupils and places. */
async function readHere(): Promise<Record<string, string>> {
  const stored = await readItems([GROUPS_KEY, SEQUENCES_KEY]);
  return Object.fromEntries([
    ...itemsIn(stored[GROUPS_KEY], 'groups').map(([id, { names: _, ...group }]) => [
      GROUP + id,
      writeSorted(group),
    ]),
    ...itemsIn(stored[SEQUENCES_KEY], 'sequences').map(([id, sequence]) => [
      SEQUENCE + id,
      writeSorted(sequence),
    ]),
  ]);
}

/** Returns the items of a stored list by their ids. Garbled items are left out. */
function itemsIn(stored: unknown, list: string): [string, Record<string, unknown>][] {
  const items = (stored as Record<string, unknown> | null | undefined)?.[list];
  return Object.entries(items ?? {}).filter(([, item]) => typeof item === 'object' && item !== null);
}

async function readThere(): Promise<Record<string, Copy>> {
  const items = Object.entries(await browser.storage.sync.get()).filter(
    ([key]) => key.startsWith(GROUP) || key.startsWith(SEQUENCE),
  );
  const copies = await Promise.all(
    items.map(async ([key, item]) => {
      try {
        const { changed, packed } = item as Packed;
        const text = packed === null ? null : await unpackText(packed);
        return [[key, { changed: Number(changed), text }] as const];
      } catch {
        return [];
      }
    }),
  );
  return Object.fromEntries(copies.flat());
}

async function putHere({ toHere, beside }: Reconciled): Promise<void> {
  const changed = (kind: string) =>
    Object.entries(toHere)
      .filter(([key]) => key.startsWith(kind))
      .map(([key, text]) => [key.slice(kind.length), text === null ? null : JSON.parse(text)] as const);
  const kept = (kind: string) =>
    Object.entries(beside)
      .filter(([key]) => key.startsWith(kind))
      .map(([key, text]) => [key.slice(kind.length), JSON.parse(text)] as const);

  const sequences = changed(SEQUENCE);
  const ownSequences = kept(SEQUENCE).map(([, item]) => parseSequence(item));
  if (sequences.length + ownSequences.length > 0) {
    const known = await loadSequences();
    await changeSequences((own) => {
      let all = { ...own };
      for (const [id, item] of sequences) all = withItem(all, id, item);
      for (const sequence of ownSequences) {
        const name = say('host.thisBrowser', { name: sequence.name });
        const id = freeSequenceId(name, { ...known, own: all });
        all = { ...all, [id]: { ...sequence, id, name } };
      }
      return all;
    });
  }
  const groups = changed(GROUP);
  const ownGroups = kept(GROUP);
  if (groups.length + ownGroups.length === 0) return;
  await changeGroups((before) => {
    let all: Groups = before;
    const withNames = (id: string, item: object): Group =>
      parseGroup({ ...item, names: findGroup(before, id)?.names ?? [] });
    for (const [id, item] of groups) {
      all = { ...all, groups: withItem(all.groups, id, item && withNames(id, item)) };
    }
    for (const [id, item] of ownGroups) {
      const group = withNames(id, item);
      const name = freeGroupName(say('host.thisBrowser', { name: group.name }), all);
      all = { ...all, groups: { ...all.groups, [freeGroupId(all)]: { ...group, name } } };
    }
    return all;
  });
}

/** Puts copies in the account. Returns the keys of the copies that the account did not take. */
async function putThere(copies: Readonly<Record<string, Copy>>): Promise<string[]> {
  const left: string[] = [];
  for (const [key, { changed, text }] of Object.entries(copies)) {
    const item: Packed = { changed, packed: text === null ? null : await packText(text) };
    const fits = key.length + JSON.stringify(item).length <= LARGEST_ITEM;
    const kept =
      fits &&
      (await browser.storage.sync.set({ [key]: item }).then(
        () => true,
        () => false,
      ));
    if (!kept) left.push(key);
  }
  return left;
}

function canRead(key: string, text: string): boolean {
  try {
    const parse = key.startsWith(GROUP) ? parseGroup : parseSequence;
    parse(JSON.parse(text));
    return true;
  } catch {
    return false;
  }
}

function withItem<T>(items: Readonly<Record<string, T>>, id: string, item: T | null): Record<string, T> {
  const { [id]: _, ...others } = items;
  return item === null ? others : { ...others, [id]: item };
}

/** Writes JSON with sorted keys, since storage keeps no order of keys. */
function writeSorted(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}
