import * as v from 'valibot';
import type { Group } from '../../analyze/types.ts';
import { type Groups, sortReadable } from './groups-store.ts';
import { inTurn } from './in-turn.ts';
import { countSchema } from './schema.ts';
import { readItem, storeItem } from './store-item.ts';
import { watchStored } from './watch-stored.ts';

const KEY = 'shelf-seen';

/** For each group, by its id, the step of which the teacher has seen what the shelf gives. */
export type SeenSteps = Readonly<Record<string, Pick<Group, 'sequence' | 'step'>>>;

const seenStep = v.object({ sequence: v.fallback(v.nullable(v.string()), null), step: countSchema });

/** The steps as they were last seen. */
export async function loadSeen(): Promise<SeenSteps> {
  return readSeen(await readItem(KEY));
}

/**
 * The step from which on texts are news to a group: the one last seen. Null where nothing is new: the group was not seen, follows another
 * sequence since, or went back.
 */
export function newsSince(seen: SeenSteps, id: string, { sequence, step }: Group): number | null {
  const before = Object.hasOwn(seen, id) ? seen[id]! : null;
  return before && before.sequence === sequence && before.step < step ? before.step : null;
}

/** Notes the step of a group as seen, and gives the one that was noted before. Rejects with `StorageFault`. */
export async function noteSeen(
  id: string,
  { sequence, step }: SeenSteps[string],
): Promise<SeenSteps[string] | undefined> {
  let before: SeenSteps[string] | undefined;
  await changeSeen((seen) => {
    before = Object.hasOwn(seen, id) ? seen[id] : undefined;
    return { ...seen, [id]: { sequence, step } };
  });
  return before;
}

/**
 * Notes where groups are that were never noted, that follow another sequence or went back, and forgets those that are gone. Rejects with
 * `StorageFault`.
 */
export function noteGroups({ groups }: Groups): Promise<void> {
  return changeSeen((seen) =>
    Object.fromEntries(
      Object.entries(groups).map(([id, group]) => [
        id,
        newsSince(seen, id, group) === null ? { sequence: group.sequence, step: group.step } : seen[id]!,
      ]),
    ),
  );
}

/** Calls back when the list of seen texts changes, here or in another window, until aborted. */
export function watchSeen(onChange: (seen: SeenSteps) => void, signal: AbortSignal): void {
  watchStored(KEY, (stored) => onChange(readSeen(stored)), signal);
}

function changeSeen(change: (seen: SeenSteps) => SeenSteps): Promise<void> {
  return inTurn(KEY, async () => {
    const before = await loadSeen();
    const after = change(before);
    // Firefox tells of a write that changes nothing too, and who shows this writes again.
    if (JSON.stringify(after) !== JSON.stringify(before)) await storeItem(KEY, after);
  });
}

function readSeen(value: unknown): SeenSteps {
  return sortReadable(value, v.parser(seenStep)).read;
}
