import { say } from '../../wording/say.ts';
import { StorageFault } from './store-item.ts';

/** What to say when a database refuses: for want of room, or for the reason the browser gives. */
export interface FaultSentences {
  readonly full: 'host.passageFull' | 'host.shelfFull';
  readonly failed: 'host.passageFailed' | 'host.shelfFailed';
}

/** Does work with a database. Rejects with `StorageFault`, whatever the work rejects with. */
export async function tellFault<T>({ full, failed }: FaultSentences, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    const isFull = error instanceof DOMException && error.name === 'QuotaExceededError';
    throw new StorageFault(isFull ? say(full) : say(failed, { why }), { cause: error });
  }
}
