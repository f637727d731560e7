import { browser } from '../browser.ts';
import { deletePassage, loadPassages, putPassages } from '../store/passages-store.ts';
import { deleteTexts, loadWhole, putTexts, readShelf, type WholeShelfText } from '../store/shelf-store.ts';
import { readItems, storeItems } from '../store/store-item.ts';
import { GROUPS_KEY, SEQUENCES_KEY } from '../store/watch-stored.ts';
import { SYNC_KEY } from '../sync/sync-state.ts';
import { type KeptItem, readEverything, writeEverythingHead, writeItem } from './everything-file.ts';

/** Texts written to the database at a time. */
const BATCH = 200;

/** How much of each kind a file of everything holds. */
export interface EverythingCounts {
  readonly groups: number;
  readonly sequences: number;
  readonly lessons: number;
  readonly passages: number;
  readonly texts: number;
}

/** All that is kept in this browser, as a file; how far the browser account has copies is no part of it. Rejects with `StorageFault`. */
export async function packEverything(): Promise<Blob> {
  // Blobs lie outside the page's memory, so that a long shelf with its texts fits.
  const parts: Blob[] = [];
  let count = 0;
  const add = (items: readonly KeptItem[]): void => {
    parts.push(new Blob(items.map(writeItem)));
    count += items.length;
  };
  add(Object.entries(await readStored()).map(([stored, value]) => ({ stored, value })));
  add((await loadPassages()).map((passage) => ({ passage })));
  for await (const slice of readShelf(BATCH)) {
    const whole = await Promise.all(slice.map(({ id }) => loadWhole(id)));
    add(whole.filter((text) => text !== undefined).map((text) => ({ text })));
  }
  return new Blob([writeEverythingHead(count), ...parts], { type: 'application/jsonl' });
}

/** Checks all of a file and counts what it holds. Rejects with `EverythingFileError`. */
export async function countEverything(file: Blob, signal: AbortSignal): Promise<EverythingCounts> {
  const counts = { groups: 0, sequences: 0, lessons: 0, passages: 0, texts: 0 };
  for await (const item of readEverything(file)) {
    signal.throwIfAborted();
    if ('passage' in item) counts.passages++;
    else if ('text' in item) counts.texts++;
    else if (item.stored === GROUPS_KEY) counts.groups = countIn(item.value, 'groups');
    else if (item.stored === SEQUENCES_KEY) counts.sequences = countIn(item.value, 'sequences');
    else if (item.stored.startsWith('lesson/')) counts.lessons++;
  }
  return counts;
}

/**
 * Puts what a file holds in the place of all that is kept here. The whole file is read and checked first, and nothing is deleted before all
 * of it is here. Rejects with `EverythingFileError` or `StorageFault`.
 */
export async function restoreEverything(file: Blob, signal: AbortSignal): Promise<void> {
  await countEverything(file, signal);
  const stored = new Map<string, unknown>();
  const ids = { passages: new Set<string>(), texts: new Set<string>() };
  let batch: WholeShelfText[] = [];
  for await (const item of readEverything(file)) {
    if ('stored' in item) stored.set(item.stored, item.value);
    else if ('passage' in item) {
      await putPassages([item.passage]);
      ids.passages.add(item.passage.id);
    } else {
      batch.push(item.text);
      ids.texts.add(item.text.id);
    }
    if (batch.length >= BATCH) {
      await putTexts(batch);
      batch = [];
    }
  }
  if (batch.length > 0) await putTexts(batch);
  stored.delete(SYNC_KEY);
  const before = Object.keys(await readStored());
  await storeItems(Object.fromEntries(stored));
  await browser.storage.local.remove(before.filter((key) => !stored.has(key)));
  for (const { id } of await loadPassages()) if (!ids.passages.has(id)) await deletePassage(id);
  for await (const slice of readShelf(BATCH)) {
    const gone = slice.map(({ id }) => id).filter((id) => !ids.texts.has(id));
    if (gone.length > 0) await deleteTexts(gone);
  }
}

async function readStored(): Promise<Record<string, unknown>> {
  const { [SYNC_KEY]: _, ...stored } = await readItems(null);
  return stored;
}

function countIn(value: unknown, list: string): number {
  return Object.keys((value as Record<string, object | undefined> | null)?.[list] ?? {}).length;
}
