import herons from '../../../profiles/groups/herons.json' with { type: 'json' };
import plovers from '../../../profiles/groups/plovers.json' with { type: 'json' };
import { defaultAccent, parseGroup } from '../../analyze/index.ts';
import type { Accent, Group, Sequence } from '../../analyze/types.ts';
import { inTurn } from './in-turn.ts';
import { readItem, storeItem } from './store-item.ts';
import { GROUPS_KEY, watchStored } from './watch-stored.ts';

/** The teacher's groups and which of them is chosen; kept in this browser only. */
export interface Groups {
  readonly chosen: string;
  readonly groups: Readonly<Record<string, Group>>;
  /** Groups as stored that this version cannot read; they are kept as they are for one that can. */
  readonly unread: Readonly<Record<string, unknown>>;
  /** The step that pages use for the chosen group for a while; the group's own step does not change. Left out where they use its own. */
  readonly trial?: Trial;
}

/** A step of a group's sequence that pages use for a while in place of the group's own. */
interface Trial {
  readonly group: string;
  readonly step: number;
}

const VERSION = 1;

/** The accent a new group has: that its sequence is made for, or else that of the browser's language. */
export function accentAtFirst(sequence?: Sequence | null): Accent {
  // Node 20, where the commands and tests run, has no navigator.
  return defaultAccent(globalThis.navigator?.language ?? '', sequence);
}

/** The groups before anything was stored. */
function starterGroups(): Groups {
  const accent = accentAtFirst();
  const groups = { herons: parseGroup({ ...herons, accent }), plovers: parseGroup({ ...plovers, accent }) };
  return { chosen: 'herons', groups, unread: {} };
}

/** Whether a group is one of those that come with the extension, as it came. */
export function isStarterGroup(id: string, group: Group): boolean {
  const starter = findGroup(starterGroups(), id);
  return starter !== null && JSON.stringify(starter) === JSON.stringify(group);
}

/** How they are in storage: the groups of both kinds together, and the version that wrote them. */
interface Stored {
  readonly version: number;
  readonly chosen: string;
  readonly groups: Readonly<Record<string, unknown>>;
  readonly trial?: unknown;
}

/** The stored groups, or the starters when nothing was stored yet. */
export async function loadGroups(): Promise<Groups> {
  return readStored(await readItem(GROUPS_KEY));
}

/** A group by its id, which may be any text an address or a file names; null when no group has it. */
export function findGroup({ groups }: Pick<Groups, 'groups'>, id: string): Group | null {
  return Object.hasOwn(groups, id) ? groups[id]! : null;
}

/** The group a page is checked against now. */
export function chosenGroup(groups: Groups): Group {
  return findGroup(groups, groups.chosen) ?? Object.values(groups.groups)[0]!;
}

/** The group a page shows now: the chosen one, at the step that is tried if there is one. */
export function shownGroup(groups: Groups): Group {
  const group = chosenGroup(groups);
  return groups.trial ? { ...group, step: groups.trial.step } : group;
}

/**
 * Changes the stored groups by a function of the stored ones; one change after another, so that none is lost.
 */
export function changeGroups(change: (groups: Groups) => Groups): Promise<void> {
  return inTurn(GROUPS_KEY, async () => {
    const { chosen, groups, unread, trial } = change(await loadGroups());
    const stored: Stored = { version: VERSION, chosen, groups: { ...unread, ...groups } };
    await storeItem(GROUPS_KEY, trial?.group === chosen ? { ...stored, trial } : stored);
  });
}

/** Shows the chosen group on pages as if it were at another step, or with null at its own again. */
export function tryStep(step: number | null): Promise<void> {
  return changeGroups(({ trial: _, ...groups }) =>
    step === null ? groups : { ...groups, trial: { group: groups.chosen, step } },
  );
}

/** Replaces a group by a function of it; one that is gone stays gone. */
export function changeGroupById(id: string, change: (group: Group) => Group): Promise<void> {
  return changeGroups((all) => {
    const group = findGroup(all, id);
    return group ? { ...all, groups: { ...all.groups, [id]: change(group) } } : all;
  });
}

/** Replaces the chosen group by a function of it. */
export function changeChosen(change: (group: Group) => Group): Promise<void> {
  return changeGroups((groups) => ({
    ...groups,
    groups: { ...groups.groups, [groups.chosen]: change(chosenGroup(groups)) },
  }));
}

/** Calls back with the groups each time they change, until aborted. */
export function watchGroups(onChange: (groups: Groups) => void, signal: AbortSignal): void {
  watchStored(GROUPS_KEY, (stored) => onChange(readStored(stored)), signal);
}

/** The groups in a stored value that can be read, by their ids. */
export function readGroups(value: unknown): Readonly<Record<string, Group>> {
  return sortReadable((value as Partial<Stored> | null)?.groups, parseGroup).read;
}

/** At least one group can be read: the starters are there when no stored group can. */
function readStored(value: unknown): Groups {
  if (typeof value !== 'object' || value === null) return starterGroups();
  const stored = value as Partial<Stored>;
  const { read: groups, unread } = sortReadable(stored.groups, parseGroup);
  if (Object.keys(groups).length === 0) {
    for (const [id, group] of Object.entries(starterGroups().groups)) groups[freeId(id, unread)] = group;
  }
  const { chosen } = stored;
  const isThere = typeof chosen === 'string' && Object.hasOwn(groups, chosen);
  const inUse = isThere ? chosen : Object.keys(groups)[0]!;
  const trial = readTrial(stored.trial, inUse);
  return { chosen: inUse, groups: byName(groups), unread, ...(trial && { trial }) };
}

function readTrial(value: unknown, chosen: string): Trial | null {
  const { group, step } = (value ?? {}) as Partial<Trial>;
  const isStep = typeof step === 'number' && Number.isInteger(step) && step >= 0;
  return group === chosen && isStep ? { group, step } : null;
}

function freeId(id: string, taken: object): string {
  return Object.hasOwn(taken, id) ? freeId(`${id}-starter`, taken) : id;
}

/** Parts stored items into those a parser takes and those it throws at, each under its id. */
export function sortReadable<T>(
  stored: unknown,
  parse: (item: unknown) => T,
): { readonly read: Record<string, T>; readonly unread: Record<string, unknown> } {
  const read: [string, T][] = [];
  const unread: [string, unknown][] = [];
  for (const [id, item] of Object.entries(stored ?? {})) {
    try {
      read.push([id, parse(item)]);
    } catch {
      unread.push([id, item]);
    }
  }
  return { read: Object.fromEntries(read), unread: Object.fromEntries(unread) };
}

/** An id no group has: `group-3`. */
export function freeGroupId({ groups, unread }: Groups): string {
  const taken = new Set([groups, unread].flatMap(Object.keys));
  for (let n = 1; ; n++) if (!taken.has(`group-${n}`)) return `group-${n}`;
}

/** A name no group has: `Herons (copy)`, `Herons (copy 2)`. */
export function freeGroupName(wanted: string, { groups }: Groups): string {
  const taken = new Set(Object.values(groups).map(({ name }) => name));
  let name = wanted;
  for (let n = 2; taken.has(name); n++) {
    name = wanted.endsWith(')') ? `${wanted.slice(0, -1)} ${n})` : `${wanted} ${n}`;
  }
  return name;
}

/** Made when there are names to compare: a background that begins would wait for it. */
let names: Intl.Collator | undefined;

function compareNames(one: string, other: string): number {
  names ??= new Intl.Collator('en', { numeric: true });
  return names.compare(one, other);
}

/** In the order of their names, since browsers keep no order of stored ids. */
export function byName<T extends { readonly name: string }>(
  items: Readonly<Record<string, T>>,
): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(items).sort(([, a], [, b]) => compareNames(a.name, b.name)));
}
