import { type LessonPreset, parsePresets } from '../../lesson/index.ts';
import { readItem, storeItem } from './store-item.ts';
import { watchStored } from './watch-stored.ts';

/** Where they are in storage. */
export const PRESETS_KEY = 'lesson-presets';

/** The teacher's own presets of lessons, in the order they were saved. Rejects with `StorageFault`. */
export async function loadPresets(): Promise<readonly LessonPreset[]> {
  return parsePresets(await readItem(PRESETS_KEY));
}

/** Keeps all of the teacher's presets in this browser. Rejects with `StorageFault`. */
export function keepPresets(presets: readonly LessonPreset[]): Promise<void> {
  return storeItem(PRESETS_KEY, presets);
}

/** Calls back with the presets each time they change, until aborted. */
export function watchPresets(
  onChange: (presets: readonly LessonPreset[]) => void,
  signal: AbortSignal,
): void {
  watchStored(PRESETS_KEY, (stored) => onChange(parsePresets(stored)), signal);
}
