import { StorageFault } from './store-item.ts';

/** What to say when a database refuses: for want of room, or for the reason the browser gives. */
export interface FaultSentences {
  readonly full: string;
  readonly failed: (why: string) => string;
}

/** Does work with a database. Rejects with `StorageFault`, whatever the work rejects with. */
export async function tellFault<T>({ full, failed }: FaultSentences, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    const isFull = error instanceof DOMException && error.name === 'QuotaExceededError';
    throw new StorageFault(isFull ? full : failed(why), { cause: error });
  }
}
