import type { Look } from '../../contract/page-contract.ts';
import { browser } from '../browser.ts';
import { storeItem } from './store-item.ts';
import { watchStored } from './watch-stored.ts';

const KEY = 'look';

/**
 * Loads the chosen look. The default is a wash. A storage error is not explained in a sentence, because pages have no
 * room for one.
 */
export async function loadLook(): Promise<Look> {
  const { [KEY]: stored } = await browser.storage.local.get(KEY);
  return readLook(stored);
}

/** Saves the look for all pages. Rejects with `StorageFault`. */
export function keepLook(look: Look): Promise<void> {
  return storeItem(KEY, look);
}

/** Calls `onChange` with the look each time it changes, until the signal is aborted. */
export function watchLook(onChange: (look: Look) => void, signal: AbortSignal): void {
  watchStored(KEY, (stored) => onChange(readLook(stored)), signal);
}

const PRIVATE = 'private-marks';

/** Loads whether marks are private, that is, drawn where no script of the page can see them. The default is false. */
export async function loadPrivateMarks(): Promise<boolean> {
  const { [PRIVATE]: stored } = await browser.storage.local.get(PRIVATE);
  return stored === true;
}

/** Saves whether marks are private, for all pages. Rejects with `StorageFault`. */
export function keepPrivateMarks(isPrivate: boolean): Promise<void> {
  return storeItem(PRIVATE, isPrivate);
}

/** Calls `onChange` with the choice of private marks each time it changes, until the signal is aborted. */
export function watchPrivateMarks(onChange: (isPrivate: boolean) => void, signal: AbortSignal): void {
  watchStored(PRIVATE, (stored) => onChange(stored === true), signal);
}

function readLook(stored: unknown): Look {
  return stored === 'underline' ? 'underline' : 'wash';
}
