import { browser } from './browser.ts';

/** Why something could not be kept, in a sentence with the next step. */
export class StorageFault extends Error {}

/** Keeps a value in this browser under a key. Rejects with `StorageFault`; what was kept before is still there. */
export async function storeItem(key: string, value: unknown): Promise<void> {
  try {
    await browser.storage.local.set({ [key]: value });
  } catch (error) {
    throw new StorageFault(explain(error), { cause: error });
  }
}

function explain(error: unknown): string {
  const why = error instanceof Error ? error.message : String(error);
  return /quota/i.test(why)
    ? 'This was not kept: the browser’s room for Wordreach is full. Save your groups in a file, then delete sequences you no longer use.'
    : `This was not kept, because the browser could not store it (${why}). What was there before is unchanged; please try again.`;
}
