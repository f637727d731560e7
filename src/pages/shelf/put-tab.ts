import { loadGroups } from '../../host/store/groups-store.ts';
import { noteGroups } from '../../host/store/shelf-seen.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { TakeFault } from '../../passage/read-page-text.ts';
import { say } from '../../wording/say.ts';
import { addToShelf, type Shelving } from './add-to-shelf.ts';
import { readTab } from './read-tab.ts';

/**
 * Puts the words of a shaded page on the shelf, and also its text if that is to be kept. On failure, returns the
 * reason.
 */
export async function putTab(tab: number, keepsText: boolean): Promise<Shelving | { readonly why: string }> {
  try {
    const put = await addToShelf(await readTab(tab, keepsText));
    // Later moves of the groups are measured from the steps noted now.
    await noteGroups(await loadGroups());
    return put;
  } catch (error) {
    if (error instanceof StorageFault || error instanceof TakeFault) return { why: error.message };
    const why = error instanceof Error ? error.message : String(error);
    return { why: say('shelf.pageFailed', { why }) };
  }
}
