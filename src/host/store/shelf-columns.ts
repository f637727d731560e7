import { readItem, storeItem } from './store-item.ts';
import { watchStored } from './watch-stored.ts';

const KEY = 'shelf-columns';

/**
 * Loads the ids of groups in the order in which the teacher put their columns. Groups that are not in the list come
 * last.
 */
export async function loadColumns(): Promise<readonly string[]> {
  return readColumns(await readItem(KEY));
}

/** Saves the order of the columns. Rejects with `StorageFault`. */
export function keepColumns(ids: readonly string[]): Promise<void> {
  return storeItem(KEY, ids);
}

/** Calls `onChange` with the order each time it changes, until the signal is aborted. */
export function watchColumns(onChange: (ids: readonly string[]) => void, signal: AbortSignal): void {
  watchStored(KEY, (stored) => onChange(readColumns(stored)), signal);
}

function readColumns(stored: unknown): readonly string[] {
  return Array.isArray(stored) ? stored.filter((id) => typeof id === 'string') : [];
}
