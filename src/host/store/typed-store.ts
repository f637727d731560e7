import { browser } from '../browser.ts';
import { readItem, storeItem } from './store-item.ts';

const PREFIX = 'typed/';

/**
 * Texts typed in fields and not saved yet, by the names of the fields. `load` and `note` reject with `StorageFault`
 * when the storage refuses.
 */
export const typedStore = {
  /** Loads the text that was not saved when the browser ended, or null if there is none. */
  async load(field: string): Promise<string | null> {
    const typed = await readItem(PREFIX + field);
    return typeof typed === 'string' && typed !== '' ? typed : null;
  },
  /** Saves the text typed in a field so far. */
  note: (field: string, typed: string): Promise<void> => storeItem(PREFIX + field, typed),
  /** Deletes the text of a field that the user has left, once the text is saved or discarded. */
  forget: (field: string): Promise<void> => browser.storage.local.remove([PREFIX + field]),
};
