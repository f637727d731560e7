import herons from '../../../profiles/groups/herons.json' with { type: 'json' };
import plovers from '../../../profiles/groups/plovers.json' with { type: 'json' };
import { defaultAccent, parseGroup } from '../../analyze/index.ts';
import type { Accent, Group, Sequence } from '../../analyze/types.ts';
import { inTurn } from './in-turn.ts';
import { readItem, storeItem } from './store-item.ts';
import { GROUPS_KEY, watchStored } from './watch-stored.ts';

/** The teacher's groups and the id of the chosen group. They are stored in this browser only. */
export interface Groups {
  readonly chosen: string;
  readonly groups: Readonly<Record<string, Group>>;
  /** Stored groups that this version cannot read. These groups are kept unchanged for a version that can. */
  readonly unread: Readonly<Record<string, unknown>>;
  /**
   * A step that pages use for the chosen group for a while. The group's own step does not change. Left out when pages
   * use the group's own step.
   */
  readonly trial?: Trial;
}

/** A step of a group's sequence that pages use for a while in place of the group's own. */
interface Trial {
  readonly group: string;
  readonly step: number;
}

const VERSION = 1;

/**
 * The accent of a new group: the accent that its sequence is made for, or otherwise the accent of the browser's
 * language.
 */
export function accentAtFirst(sequence?: Sequence | null): Accent {
  // Node 20, which runs the commands and tests, has no `navigator`.
  return defaultAccent(globalThis.navigator?.language ?? '', sequence);
}

/** Returns the groups that exist before anything is stored. */
function starterGroups(): Groups {
  const accent = accentAtFirst();
  const groups = { herons: parseGroup({ ...herons, accent }), plovers: parseGroup({ ...plovers, accent }) };
  return { chosen: 'herons', groups, unread: {} };
}

/** Whether a group came with the extension and is unchanged. */
export function isStarterGroup(id: string, group: Group): boolean {
  const starter = findGroup(starterGroups(), id);
  return starter !== null && JSON.stringify(starter) === JSON.stringify(group);
}

/** The groups as they are in storage: readable and unreadable groups together, with the version that wrote them. */
interface Stored {
  readonly version: number;
  readonly chosen: string;
  readonly groups: Readonly<Record<string, unknown>>;
  readonly trial?: unknown;
}

/** Loads the stored groups, or the starter groups when nothing was stored yet. */
export async function loadGroups(): Promise<Groups> {
  return readStored(await readItem(GROUPS_KEY));
}

/** Returns the group with this id, or null when no group has it. The id may be any text from an address or a file. */
export function findGroup({ groups }: Pick<Groups, 'groups'>, id: string): Group | null {
  return Object.hasOwn(groups, id) ? groups[id]! : null;
}

/** The group a page is checked against now. */
export function chosenGroup(groups: Groups): Group {
  return findGroup(groups, groups.chosen) ?? Object.values(groups.groups)[0]!;
}

/** The group a page shows now: the chosen group, at the trial step if there is one. */
export function shownGroup(groups: Groups): Group {
  const group = chosenGroup(groups);
  return groups.trial ? { ...group, step: groups.trial.step } : group;
}

/** Replaces the stored groups with the result of `change`. Changes run one after another, so that none is lost. */
export function changeGroups(change: (groups: Groups) => Groups): Promise<void> {
  return inTurn(GROUPS_KEY, async () => {
    const { chosen, groups, unread, trial } = change(await loadGroups());
    const stored: Stored = { version: VERSION, chosen, groups: { ...unread, ...groups } };
    await storeItem(GROUPS_KEY, trial?.group === chosen ? { ...stored, trial } : stored);
  });
}

/** Shows the chosen group on pages as if it were at another step. Null shows the group's own step again. */
export function tryStep(step: number | null): Promise<void> {
  return changeGroups(({ trial: _, ...groups }) =>
    step === null ? groups : { ...groups, trial: { group: groups.chosen, step } },
  );
}

/** Replaces a group with the result of `change`. Does nothing when the group is gone. */
export function changeGroupById(id: string, change: (group: Group) => Group): Promise<void> {
  return changeGroups((all) => {
    const group = findGroup(all, id);
    return group ? { ...all, groups: { ...all.groups, [id]: change(group) } } : all;
  });
}

/** Replaces the chosen group with the result of `change`. */
export function changeChosen(change: (group: Group) => Group): Promise<void> {
  return changeGroups((groups) => ({
    ...groups,
    groups: { ...groups.groups, [groups.chosen]: change(chosenGroup(groups)) },
  }));
}

/** Calls `onChange` with the groups each time they change, until the signal is aborted. */
export function watchGroups(onChange: (groups: Groups) => void, signal: AbortSignal): void {
  watchStored(GROUPS_KEY, (stored) => onChange(readStored(stored)), signal);
}

/** Returns the readable groups in a stored value, by id. */
export function readGroups(value: unknown): Readonly<Record<string, Group>> {
  return sortReadable((value as Partial<Stored> | null)?.groups, parseGroup).read;
}

/**
 * Reads the stored groups. The result has at least one group: the starter groups are added when no stored group can be
 * read.
 */
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

/** Separates stored items into items that a parser accepts and items at which it throws, each under its id. */
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

/** Returns an id that no group has, such as `group-3`. */
export function freeGroupId({ groups, unread }: Groups): string {
  const taken = new Set([groups, unread].flatMap(Object.keys));
  for (let n = 1; ; n++) if (!taken.has(`group-${n}`)) return `group-${n}`;
}

/** Returns a name that no group has, such as `Herons (copy)` or `Herons (copy 2)`. */
export function freeGroupName(wanted: string, { groups }: Groups): string {
  const taken = new Set(Object.values(groups).map(({ name }) => name));
  let name = wanted;
  for (let n = 2; taken.has(name); n++) {
    name = wanted.endsWith(')') ? `${wanted.slice(0, -1)} ${n})` : `${wanted} ${n}`;
  }
  return name;
}

/**
 * The collator is created only when there are names to compare. Otherwise the start of the background would wait for
 * it.
 */
let names: Intl.Collator | undefined;

function compareNames(one: string, other: string): number {
  names ??= new Intl.Collator('en', { numeric: true });
  return names.compare(one, other);
}

/** Sorts items by name, since browsers keep no order of stored ids. */
export function byName<T extends { readonly name: string }>(
  items: Readonly<Record<string, T>>,
): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(items).sort(([, a], [, b]) => compareNames(a.name, b.name)));
}
