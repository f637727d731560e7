import herons from '../../profiles/groups/herons.json' with { type: 'json' };
import plovers from '../../profiles/groups/plovers.json' with { type: 'json' };
import { parseGroup } from '../analyze/index.ts';
import type { Group } from '../analyze/types.ts';
import { browser } from './browser.ts';
import { GROUPS_KEY, watchStoredGroups } from './watch-groups.ts';

/** The teacher's groups and which of them is chosen; kept in this browser only. */
export interface Groups {
  readonly chosen: string;
  readonly groups: Readonly<Record<string, Group>>;
}

const VERSION = 1;

const starters: Groups = {
  chosen: 'herons',
  groups: { herons: parseGroup(herons), plovers: parseGroup(plovers) },
};

interface Stored extends Groups {
  readonly version: number;
}

/** The stored groups, or the starters when nothing was stored yet. */
export async function loadGroups(): Promise<Groups> {
  return readStored((await browser.storage.local.get(GROUPS_KEY))[GROUPS_KEY]);
}

/** The group a page is checked against now. */
export function chosenGroup({ chosen, groups }: Groups): Group {
  return groups[chosen] ?? Object.values(groups)[0]!;
}

/**
 * Changes the stored groups by a function of what is stored; one change after another, so that none is lost.
 */
export function changeGroups(change: (groups: Groups) => Groups): Promise<void> {
  const done = last.then(async () => {
    const stored: Stored = { version: VERSION, ...change(await loadGroups()) };
    await browser.storage.local.set({ [GROUPS_KEY]: stored });
  });
  last = done.catch(() => undefined);
  return done;
}
let last: Promise<void> = Promise.resolve();

/** Replaces the chosen group by a function of it. */
export function changeChosen(change: (group: Group) => Group): Promise<void> {
  return changeGroups((groups) => ({
    ...groups,
    groups: { ...groups.groups, [groups.chosen]: change(chosenGroup(groups)) },
  }));
}

/** Calls back with the groups each time they change, until aborted. */
export function watchGroups(onChange: (groups: Groups) => void, signal: AbortSignal): void {
  watchStoredGroups((stored) => onChange(readStored(stored)), signal);
}

/** What cannot be read is set aside by using the starters in its place; it stays stored until something is saved. */
function readStored(value: unknown): Groups {
  if (typeof value !== 'object' || value === null) return starters;
  const { chosen, groups } = value as Partial<Stored>;
  const read: Record<string, Group> = {};
  for (const [id, group] of Object.entries(groups ?? {})) {
    try {
      read[id] = parseGroup(group);
    } catch {
      read[id] = { ...starters.groups.herons!, name: `${id} (could not be read)` };
    }
  }
  if (Object.keys(read).length === 0) return starters;
  return { chosen: chosen && chosen in read ? chosen : Object.keys(read)[0]!, groups: read };
}
