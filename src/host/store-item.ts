import { say } from '../wording/say.ts';
import { browser } from './browser.ts';

/** Why something could not be kept, in a sentence with the next step. */
export class StorageFault extends Error {}

/** Keeps a value in this browser under a key. Rejects with `StorageFault`; what was kept before is still there. */
export function storeItem(key: string, value: unknown): Promise<void> {
  return storeItems({ [key]: value });
}

/** Keeps values in this browser by their keys, all or none. Rejects with `StorageFault`. */
export async function storeItems(items: Readonly<Record<string, unknown>>): Promise<void> {
  try {
    await browser.storage.local.set(items);
  } catch (error) {
    throw new StorageFault(explain(error), { cause: error });
  }
}

function explain(error: unknown): string {
  const why = error instanceof Error ? error.message : String(error);
  return /quota/i.test(why) ? say('host.storageFull') : say('host.storageFailed', { why });
}
