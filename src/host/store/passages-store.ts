import type { DBSchema } from 'idb';
import { freePassageId, type Passage } from '../../passage/kept/passage.ts';
import { say } from '../../wording/say.ts';
import { keepOpen } from './keep-open.ts';
import { passageSchema } from './passage-schema.ts';
import { takeReadable, tellFault } from './tell-fault.ts';
import { createWindowNews } from './window-news.ts';

interface PassagesSchema extends DBSchema {
  passages: { key: string; value: Passage };
}

/**
 * The result of saving a passage. The outcome is `parted` when another window had saved the passage since it was read;
 * both versions are then kept. Otherwise the outcome is `kept`.
 */
export interface Saved {
  readonly outcome: 'kept' | 'parted';
  readonly passage: Passage;
}

const news = createWindowNews<null>('passages');

const open = keepOpen<PassagesSchema>('desk', 1, (db) => {
  db.createObjectStore('passages', { keyPath: 'id' });
});

/** Loads all readable passages, the last saved first. Rejects with `StorageFault`. */
export async function loadPassages(): Promise<Passage[]> {
  const all = await told(async () => (await open()).getAll('passages'));
  return takeReadable(passageSchema, all, 'host.passageUnread').sort((a, b) => b.saved - a.saved);
}

/** Loads one passage. Returns undefined when the passage is gone or cannot be read. Rejects with `StorageFault`. */
export async function loadPassage(id: string): Promise<Passage | undefined> {
  const found = await told(async () => (await open()).get('passages', id));
  return takeReadable(passageSchema, found ? [found] : [], 'host.passageUnread')[0];
}

/**
 * Saves a passage with the `rev` it was read with. When another window has saved the passage meanwhile, the new version
 * is saved beside the stored one under a new id, so that nothing is lost. Rejects with `StorageFault`; the stored
 * passage is then unchanged.
 */
export async function savePassage(passage: Passage): Promise<Saved> {
  const saved = await told(async () => {
    const db = await open();
    const change = db.transaction('passages', 'readwrite');
    const there = await change.store.get(passage.id);
    const isParted = there !== undefined && there.rev !== passage.rev;
    const kept: Passage = {
      ...passage,
      ...(isParted && { id: freePassageId(), title: say('host.otherWindow', { title: passage.title }) }),
      rev: passage.rev + 1,
      saved: Date.now(),
    };
    await change.store.put(kept);
    await change.done;
    return { outcome: isParted ? 'parted' : 'kept', passage: kept } as const;
  });
  news.tell(null);
  return saved;
}

/**
 * Stores passages as they are, all or none, and replaces stored passages with the same ids. Rejects with
 * `StorageFault`.
 */
export async function putPassages(passages: readonly Passage[]): Promise<void> {
  await told(async () => {
    const change = (await open()).transaction('passages', 'readwrite');
    // A write that fails is reported at the end of the whole transaction.
    for (const passage of passages) void change.store.put(passage).catch(() => undefined);
    await change.done;
  });
  news.tell(null);
}

/** Deletes a passage for good. Rejects with `StorageFault`. */
export async function deletePassage(id: string): Promise<void> {
  await told(async () => (await open()).delete('passages', id));
  news.tell(null);
}

/** Calls `onChange` when this or another window saves or deletes a passage, until the signal is aborted. */
export function watchPassages(onChange: () => void, signal: AbortSignal): void {
  news.watch(onChange, signal);
}

function told<T>(work: () => Promise<T>): Promise<T> {
  return tellFault({ full: 'host.passageFull', failed: 'host.passageFailed' }, work);
}
