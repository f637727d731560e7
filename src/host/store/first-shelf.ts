import { inTurn } from './in-turn.ts';
import { readItem, storeItem } from './store-item.ts';

/** `due` from the install until the shelf is first opened, then `put`; nothing for who had the extension before it came with texts. */
const KEY = 'first-shelf';

/** Notes, once the extension is installed, that its own texts are to be on the shelf. Rejects with `StorageFault`. */
export function expectFirstShelf(): Promise<void> {
  return storeItem(KEY, 'due');
}

/** Puts those texts on the shelf, by `put`, if they are expected, and never again. Rejects as `put` does, or with `StorageFault`. */
export function putFirstShelf(put: () => Promise<unknown>): Promise<void> {
  return inTurn(KEY, async () => {
    if ((await readItem(KEY)) !== 'due') return;
    await put();
    await storeItem(KEY, 'put');
  });
}
