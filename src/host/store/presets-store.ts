import { type LessonPreset, parsePresets } from '../../lesson/index.ts';
import { readItem, storeItem } from './store-item.ts';
import { watchStored } from './watch-stored.ts';

/** The storage key of the presets. */
export const PRESETS_KEY = 'lesson-presets';

/** Loads the teacher's own lesson presets, in the order they were saved. Rejects with `StorageFault`. */
export async function loadPresets(): Promise<readonly LessonPreset[]> {
  return parsePresets(await readItem(PRESETS_KEY));
}

/** Saves all of the teacher's presets in this browser. Rejects with `StorageFault`. */
export function keepPresets(presets: readonly LessonPreset[]): Promise<void> {
  return storeItem(PRESETS_KEY, presets);
}

/** Calls `onChange` with the presets each time they change, until the signal is aborted. */
export function watchPresets(
  onChange: (presets: readonly LessonPreset[]) => void,
  signal: AbortSignal,
): void {
  watchStored(PRESETS_KEY, (stored) => onChange(parsePresets(stored)), signal);
}
