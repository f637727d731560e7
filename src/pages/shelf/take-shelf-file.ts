import { readShelfFile, writeHead, writeText } from '../../host/files/shelf-file.ts';
import {
  findAlike,
  freeTextId,
  loadTexts,
  loadWhole,
  putTexts,
  readShelf,
  type WholeShelfText,
} from '../../host/store/shelf-store.ts';
import { hasSameWords } from './add-to-shelf.ts';

/** Texts written to the database at a time. */
const BATCH = 200;

/** The whole shelf as a file, with the texts that are kept; a part of it where ids are given. Rejects with `StorageFault`. */
export async function packShelf(only: ReadonlySet<string> | null, signal: AbortSignal): Promise<Blob> {
  // Blobs lie outside the page's memory, so that a long shelf with its texts fits.
  const parts: Blob[] = [];
  let count = 0;
  for await (const slice of readShelf(BATCH)) {
    signal.throwIfAborted();
    const chosen = slice.filter(({ id }) => only === null || only.has(id));
    const whole = await Promise.all(
      chosen.map(async ({ isKept, ...text }) => (isKept ? loadWhole(text.id) : { ...text, text: null })),
    );
    const lines = whole.filter((text) => text !== undefined).map(writeText);
    count += lines.length;
    parts.push(new Blob(lines));
  }
  return new Blob([writeHead(count), ...parts], { type: 'application/jsonl' });
}

/** What came of taking a file: how many texts are new, and how many were here already. */
export interface TakenFile {
  readonly added: number;
  readonly there: number;
}

/**
 * Adds the texts of a file to the shelf; nothing on it is changed. A text that is here already, with the same content, is not doubled; one
 * that was changed since is added under another id, so that nothing is lost. All of the file is checked
 * before the first is added. Rejects with `ShelfFileError` or `StorageFault`.
 */
export async function takeShelfFile(file: Blob, signal: AbortSignal): Promise<TakenFile> {
  for await (const _ of readShelfFile(file)) signal.throwIfAborted();
  let added = 0;
  let there = 0;
  let batch = new Map<string, WholeShelfText>();
  const flush = async (): Promise<void> => {
    const known = new Set((await loadTexts([...batch.keys()])).map(({ id }) => id));
    const fresh = [...batch.values()].filter(({ id }) => !known.has(id));
    for (const text of [...batch.values()].filter(({ id }) => known.has(id))) {
      const isHere = (await findAlike(text)).some((other) => hasSameContent(other, text));
      if (!isHere) fresh.push({ ...text, id: freeTextId() });
    }
    await putTexts(fresh);
    added += fresh.length;
    there += batch.size - fresh.length;
    batch = new Map();
  };
  for await (const text of readShelfFile(file)) {
    signal.throwIfAborted();
    if (batch.has(text.id)) await flush();
    batch.set(text.id, text);
    if (batch.size >= BATCH) await flush();
  }
  if (batch.size > 0) await flush();
  return { added, there };
}

/** Whether all but the id is the same. */
function hasSameContent(a: WholeShelfText, b: WholeShelfText): boolean {
  const { id: _a, words: _wa, ...restA } = a;
  const { id: _b, words: _wb, ...restB } = b;
  const keys = Object.keys(restA) as (keyof typeof restA)[];
  return hasSameWords(a, b) && keys.every((key) => JSON.stringify(restA[key]) === JSON.stringify(restB[key]));
}
