import * as v from 'valibot';
import { say } from '../../wording/say.ts';
import { StorageFault } from './store-item.ts';

/**
 * The keys of the sentences for a database error. `full` is for a full storage, `failed` for the reason that the
 * browser gives.
 */
export interface FaultSentences {
  readonly full: 'host.passageFull' | 'host.shelfFull';
  readonly failed: 'host.passageFailed' | 'host.shelfFailed';
}

/** Runs a task on a database. Rejects with `StorageFault`, whatever error the task rejects with. */
export async function tellFault<T>({ full, failed }: FaultSentences, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    const isFull = error instanceof DOMException && error.name === 'QuotaExceededError';
    throw new StorageFault(isFull ? say(full) : say(failed, { why }), { cause: error });
  }
}

/**
 * Returns the stored items that fit the schema. Items that do not fit stay in the database unchanged. The user is told
 * so once, while the page's work continues: a promise is rejected, and `FaultNote` shows a fault that nobody handled.
 */
export function takeReadable<T>(
  schema: v.GenericSchema<unknown, T>,
  stored: readonly unknown[],
  unread: 'host.passageUnread' | 'host.shelfTextUnread',
): T[] {
  const read = stored.map((item) => v.safeParse(schema, item));
  if (!told.has(unread) && read.some(({ success }) => !success)) {
    told.add(unread);
    void Promise.reject(new StorageFault(say(unread)));
  }
  return read.flatMap(({ success, output }) => (success ? [output] : []));
}

const told = new Set<string>();
