import { addSheet, type EarlierSheet, parseSheets } from '../../lesson/index.ts';
import { browser } from '../browser.ts';
import { inTurn } from './in-turn.ts';
import { readItem, readItems, storeItem } from './store-item.ts';

const PREFIX = 'sheets/';

/** The words on the sheets of a group that were printed or saved, the earliest first. Rejects with `StorageFault`. */
export async function loadSheets(group: string): Promise<readonly EarlierSheet[]> {
  return parseSheets(await readItem(PREFIX + group));
}

/** Notes the words and patterns of a sheet that was printed or saved. Rejects with `StorageFault`. */
export function noteSheet(group: string, sheet: EarlierSheet): Promise<void> {
  return inTurn(PREFIX, async () => storeItem(PREFIX + group, addSheet(await loadSheets(group), sheet)));
}

/** Forgets the sheets of groups that were deleted. */
export async function forgetSheets(isThere: (group: string) => boolean): Promise<void> {
  const keys = Object.keys(await readItems(null)).filter((key) => key.startsWith(PREFIX));
  const gone = keys.filter((key) => !isThere(key.slice(PREFIX.length)));
  if (gone.length > 0) await browser.storage.local.remove(gone);
}
