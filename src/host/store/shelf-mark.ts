import { READING_LEVELS } from '../../analyze/index.ts';
import { readItem, storeItem } from './store-item.ts';
import { watchStored } from './watch-stored.ts';

const KEY = 'shelf-mark';

/** The least and the greatest mark a teacher may set, in percent of running words. */
export const LOWEST_MARK = 90;
export const HIGHEST_MARK = 100;

/** The reach from which on a text of the shelf reads, in whole percent. */
export async function loadMark(): Promise<number> {
  return readMark(await readItem(KEY));
}

/** Keeps the mark. Rejects with `StorageFault`. */
export function keepMark(mark: number): Promise<void> {
  return storeItem(KEY, readMark(mark));
}

/** Calls back with the mark each time it changes, until aborted. */
export function watchMark(onChange: (mark: number) => void, signal: AbortSignal): void {
  watchStored(KEY, (stored) => onChange(readMark(stored)), signal);
}

function readMark(stored: unknown): number {
  return Number.isInteger(stored) && (stored as number) >= LOWEST_MARK && (stored as number) <= HIGHEST_MARK
    ? (stored as number)
    : READING_LEVELS.withHelp;
}
