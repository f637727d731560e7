import { say } from '../../wording/say.ts';
import { browser } from '../browser.ts';

/** An error whose message is a sentence that says why something could not be saved, with the next step. */
export class StorageFault extends Error {}

/**
 * Reads the value stored in this browser under a key. Returns undefined when there is none. Rejects with
 * `StorageFault`, like `readItems`.
 */
export async function readItem(key: string): Promise<unknown> {
  return (await read(key))[key];
}

/**
 * Reads the values stored in this browser under some keys, or all values with null. Rejects with `StorageFault` when
 * the storage cannot be read. Nothing is overwritten in that case, since every change begins with a read.
 */
export function readItems(keys: readonly string[] | null): Promise<Readonly<Record<string, unknown>>> {
  return read(keys && [...keys]);
}

async function read(keys: string | string[] | null): Promise<Readonly<Record<string, unknown>>> {
  try {
    return await browser.storage.local.get(keys);
  } catch (error) {
    throw new StorageFault(say('host.storageUnread', { why: whyOf(error) }), { cause: error });
  }
}

/** Saves a value in this browser under a key. Rejects with `StorageFault`; the value saved before is then still there. */
export function storeItem(key: string, value: unknown): Promise<void> {
  return storeItems({ [key]: value });
}

/** Saves values in this browser by their keys, all or none. Rejects with `StorageFault`. */
export async function storeItems(items: Readonly<Record<string, unknown>>): Promise<void> {
  try {
    await browser.storage.local.set(items);
  } catch (error) {
    throw new StorageFault(explainUnstored(error), { cause: error });
  }
}

function explainUnstored(error: unknown): string {
  const why = whyOf(error);
  return /quota/i.test(why) ? say('host.storageFull') : say('host.storageFailed', { why });
}

function whyOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
