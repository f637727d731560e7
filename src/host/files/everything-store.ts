import { browser } from '../browser.ts';
import { deletePassage, loadPassages, putPassages } from '../store/passages-store.ts';
import { deleteTexts, loadWhole, putTexts, readShelf, type WholeShelfText } from '../store/shelf-store.ts';
import { readItems, storeItems } from '../store/store-item.ts';
import { SYNC_KEY } from '../sync/sync-state.ts';
import { beginFile, readWholeFile } from './wordreach-file.ts';

/** The number of texts that are read from or written to the database at a time. */
const BATCH = 200;

/**
 * Returns all that is kept in this browser, as a file. The state of the copies in the browser account is not included.
 * Rejects with `StorageFault`.
 */
export async function packEverything(): Promise<Blob> {
  const file = beginFile({ whole: true });
  file.add(Object.entries(await readStored()).map(([stored, value]) => ({ stored, value })));
  file.add((await loadPassages()).map((passage) => ({ passage })));
  for await (const slice of readShelf(BATCH)) {
    const whole = await Promise.all(slice.map(({ id }) => loadWhole(id)));
    file.add(whole.filter((text) => text !== undefined).map((text) => ({ text })));
  }
  return file.end();
}

/**
 * Replaces all that is kept in this browser with the content of a file. First the whole file is read and checked.
 * Nothing is deleted until all of the file's content is stored. Rejects with an error that `isFileError` knows, or with
 * `StorageFault`.
 */
export async function restoreEverything(file: Blob, signal: AbortSignal): Promise<void> {
  for await (const _ of readWholeFile(file)) signal.throwIfAborted();
  const stored = new Map<string, unknown>();
  const ids = { passages: new Set<string>(), texts: new Set<string>() };
  let batch: WholeShelfText[] = [];
  for await (const item of readWholeFile(file)) {
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
