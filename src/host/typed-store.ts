import { browser } from './browser.ts';
import { readItem, storeItem } from './store-item.ts';

const PREFIX = 'typed/';

/** What was typed in a field and never kept, since the browser ended; null where there is none. Rejects with `StorageFault`. */
export async function loadTyped(field: string): Promise<string | null> {
  const typed = await readItem(PREFIX + field);
  return typeof typed === 'string' && typed !== '' ? typed : null;
}

/** Notes what is in a field so far. Rejects with `StorageFault`. */
export function noteTyped(field: string, typed: string): Promise<void> {
  return storeItem(PREFIX + field, typed);
}

/** Forgets it: the field was left, and what was in it kept or put away. */
export function forgetTyped(field: string): Promise<void> {
  return browser.storage.local.remove([PREFIX + field]);
}
