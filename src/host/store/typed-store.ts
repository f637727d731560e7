import { browser } from '../browser.ts';
import { readItem, storeItem } from './store-item.ts';

const PREFIX = 'typed/';

/** Text typed in fields and not kept yet, by the names of the fields. Each rejects with `StorageFault` where the storage refuses. */
export const typedStore = {
  /** The text that the browser's end left unsaved; null where there is none. */
  async load(field: string): Promise<string | null> {
    const typed = await readItem(PREFIX + field);
    return typeof typed === 'string' && typed !== '' ? typed : null;
  },
  /** Notes the text of a field so far. */
  note: (field: string, typed: string): Promise<void> => storeItem(PREFIX + field, typed),
  /** The field was left, and its text kept or put away. */
  forget: (field: string): Promise<void> => browser.storage.local.remove([PREFIX + field]),
};
