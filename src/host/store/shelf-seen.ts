import * as v from 'valibot';
import type { Group } from '../../analyze/types.ts';
import { type Groups, sortReadable } from './groups-store.ts';
import { inTurn } from './in-turn.ts';
import { countSchema } from './schema.ts';
import { readItem, storeItem } from './store-item.ts';
import { watchStored } from './watch-stored.ts';

const KEY = 'shelf-seen';

/** The step of each group, by group id, for which the teacher has seen the texts that the shelf offers. */
export type SeenSteps = Readonly<Record<string, Pick<Group, 'sequence' | 'step'>>>;

const seenStep = v.object({ sequence: v.fallback(v.nullable(v.string()), null), step: countSchema });

/** Loads the steps that were last seen. */
export async function loadSeen(): Promise<SeenSteps> {
  return readSeen(await readItem(KEY));
}

/**
 * Returns the last seen step, from which texts are new to a group. Returns null when nothing is new: the group was not
 * seen before, now follows another sequence, or went back.
 */
export function newsSince(seen: SeenSteps, id: string, { sequence, step }: Group): number | null {
  const before = Object.hasOwn(seen, id) ? seen[id]! : null;
  return before && before.sequence === sequence && before.step < step ? before.step : null;
}

/** Records the step of a group as seen, and returns the step recorded before. Rejects with `StorageFault`. */
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
 * Records the steps of groups that were never recorded, that follow another sequence, or that went back. Deletes the
 * records of groups that are gone. Rejects with `StorageFault`.
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

/** Calls `onChange` when the seen steps change, in this or another window, until the signal is aborted. */
export function watchSeen(onChange: (seen: SeenSteps) => void, signal: AbortSignal): void {
  watchStored(KEY, (stored) => onChange(readSeen(stored)), signal);
}

function changeSeen(change: (seen: SeenSteps) => SeenSteps): Promise<void> {
  return inTurn(KEY, async () => {
    const before = await loadSeen();
    const after = change(before);
    // Firefox also reports a write that changes nothing. A view that shows these steps would then write again.
    if (JSON.stringify(after) !== JSON.stringify(before)) await storeItem(KEY, after);
  });
}

function readSeen(value: unknown): SeenSteps {
  return sortReadable(value, v.parser(seenStep)).read;
}
