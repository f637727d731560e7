import { READING_LEVELS } from '../../analyze/index.ts';
import { readItem, storeItem } from './store-item.ts';
import { watchStored } from './watch-stored.ts';

const KEY = 'shelf-mark';

/** The lowest and the highest mark that a teacher may set, in percent of running words. */
export const LOWEST_MARK = 90;
export const HIGHEST_MARK = 100;

/** Loads the mark: the reach, in whole percent, from which a text on the shelf counts as readable. */
export async function loadMark(): Promise<number> {
  return readMark(await readItem(KEY));
}

/** Saves the mark. Rejects with `StorageFault`. */
export function keepMark(mark: number): Promise<void> {
  return storeItem(KEY, readMark(mark));
}

/** Calls `onChange` with the mark each time it changes, until the signal is aborted. */
export function watchMark(onChange: (mark: number) => void, signal: AbortSignal): void {
  watchStored(KEY, (stored) => onChange(readMark(stored)), signal);
}

function readMark(stored: unknown): number {
  return Number.isInteger(stored) && (stored as number) >= LOWEST_MARK && (stored as number) <= HIGHEST_MARK
    ? (stored as number)
    : READING_LEVELS.withHelp;
}
