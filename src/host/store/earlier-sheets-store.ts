import { addSheet, type EarlierSheet, parseSheets } from '../../lesson/index.ts';
import { browser } from '../browser.ts';
import { inTurn } from './in-turn.ts';
import { readItem, readItems, storeItem } from './store-item.ts';

const PREFIX = 'sheets/';

/** Loads the words of a group's printed or saved sheets, the earliest sheet first. Rejects with `StorageFault`. */
export async function loadSheets(group: string): Promise<readonly EarlierSheet[]> {
  return parseSheets(await readItem(PREFIX + group));
}

/** Records the words and patterns of a sheet that was printed or saved. Rejects with `StorageFault`. */
export function noteSheet(group: string, sheet: EarlierSheet): Promise<void> {
  return inTurn(PREFIX, async () => storeItem(PREFIX + group, addSheet(await loadSheets(group), sheet)));
}

/** Deletes the stored sheets of groups that were deleted. */
export async function forgetSheets(isThere: (group: string) => boolean): Promise<void> {
  const keys = Object.keys(await readItems(null)).filter((key) => key.startsWith(PREFIX));
  const gone = keys.filter((key) => !isThere(key.slice(PREFIX.length)));
  if (gone.length > 0) await browser.storage.local.remove(gone);
}
