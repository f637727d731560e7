import * as v from 'valibot';
import { say } from '../../wording/say.ts';
import { StorageFault } from './store-item.ts';

/** The sentences for a database that refuses: for want of room, or for the reason the browser gives. */
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
 * Returns the items of a database that fit their schema. The other items stay in the database unchanged. The page says
 * so once, while its work continues: `FaultNote` shows a fault that nobody handled.
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
