import { inTurn } from './in-turn.ts';
import { readItem, storeItem } from './store-item.ts';

/**
 * The value under this key is `due` from the installation until the shelf is first opened, then `put`. Users who had
 * the extension before it came with texts have no value.
 */
const KEY = 'first-shelf';

/** Records at installation that the extension's own texts are to be put on the shelf. Rejects with `StorageFault`. */
export function expectFirstShelf(): Promise<void> {
  return storeItem(KEY, 'due');
}

/**
 * Puts the extension's own texts on the shelf by calling `put`, if they are expected, and never again. Rejects as `put`
 * does, or with `StorageFault`.
 */
export function putFirstShelf(put: () => Promise<unknown>): Promise<void> {
  return inTurn(KEY, async () => {
    if ((await readItem(KEY)) !== 'due') return;
    await put();
    await storeItem(KEY, 'put');
  });
}
