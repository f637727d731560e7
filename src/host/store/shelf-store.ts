import type { DBSchema } from 'idb';
import type { WordKey } from '../../analyze/types.ts';
import { keepOpen } from './keep-open.ts';
import { type ShelfText, type StoredText, storedTextSchema, type WholeShelfText } from './shelf-schema.ts';
import { takeReadable, tellFault } from './tell-fault.ts';
import { createWindowNews } from './window-news.ts';

export type { ShelfText, WholeShelfText } from './shelf-schema.ts';

/** The fields of a text on the shelf that the teacher may change. */
export type ShelfChange = Partial<Pick<ShelfText, 'title' | 'tags' | 'notes'>>;

/** The ids of texts that were put on the shelf or changed, and the ids of texts that were deleted. */
export interface ShelfNews {
  readonly put: readonly string[];
  readonly deleted: readonly string[];
}

interface ShelfSchema extends DBSchema {
  texts: { key: string; value: StoredText; indexes: { title: string; url: string } };
  /** Running texts by text id. They are stored separately, so that a long shelf opens without them. */
  kept: { key: string; value: string };
}

/** The separator between keys. No key contains white space. */
const BETWEEN = '\n';

const news = createWindowNews<ShelfNews>('shelf');

const open = keepOpen<ShelfSchema>('shelf', 1, (db) => {
  const texts = db.createObjectStore('texts', { keyPath: 'id' });
  texts.createIndex('title', 'title');
  texts.createIndex('url', 'url');
  db.createObjectStore('kept');
});

/** Counts the texts on the shelf. Rejects with `StorageFault`. */
export function countTexts(): Promise<number> {
  return told(async () => (await open()).count('texts'));
}

/**
 * Yields all readable texts in slices of at most `size`, so that the page stays responsive meanwhile. Throws
 * `StorageFault`.
 */
export async function* readShelf(size = 200): AsyncGenerator<ShelfText[]> {
  let last: string | null = null;
  while (true) {
    const range: IDBKeyRange | null = last === null ? null : IDBKeyRange.lowerBound(last, true);
    const slice: StoredText[] = await told(async () => (await open()).getAll('texts', range, size));
    if (slice.length === 0) return;
    yield unpackAll(slice);
    last = slice.at(-1)!.id;
  }
}

/** Loads the texts with these ids. Ids without a text are skipped. Rejects with `StorageFault`. */
export async function loadTexts(ids: readonly string[]): Promise<ShelfText[]> {
  return told(async () => {
    const { store } = (await open()).transaction('texts');
    const found = await Promise.all(ids.map((id) => store.get(id)));
    return unpackAll(found.filter((text) => text !== undefined));
  });
}

/** Returns the texts with this title and address, each with its kept running text. Rejects with `StorageFault`. */
export async function findAlike({ title, url }: Pick<ShelfText, 'title' | 'url'>): Promise<WholeShelfText[]> {
  return told(async () => {
    const db = await open();
    const alike = unpackAll(await db.getAllFromIndex('texts', 'title', title));
    return Promise.all(
      alike
        .filter((text) => text.url === url)
        .map(async (text) => withText(text, await db.get('kept', text.id))),
    );
  });
}

/** Loads a text with its kept running text. Returns undefined when the text is gone. Rejects with `StorageFault`. */
export async function loadWhole(id: string): Promise<WholeShelfText | undefined> {
  return told(async () => {
    const stores = (await open()).transaction(['texts', 'kept']);
    const stored = await stores.objectStore('texts').get(id);
    const [text] = unpackAll(stored ? [stored] : []);
    return text && withText(text, await stores.objectStore('kept').get(id));
  });
}

/** Puts texts on the shelf, all or none of them. Rejects with `StorageFault`. */
export async function putTexts(texts: readonly WholeShelfText[]): Promise<void> {
  await told(async () => {
    const change = (await open()).transaction(['texts', 'kept'], 'readwrite');
    // A write that fails is reported at the end of the whole transaction.
    for (const { text, ...rest } of texts) {
      void change
        .objectStore('texts')
        .put(pack({ ...rest, isKept: text !== null }))
        .catch(() => undefined);
      const kept = change.objectStore('kept');
      void (text === null ? kept.delete(rest.id) : kept.put(text, rest.id)).catch(() => undefined);
    }
    await change.done;
  });
  news.tell({ put: texts.map(({ id }) => id), deleted: [] });
}

/**
 * Changes the teacher's own fields of a text. The change starts from the values stored now, so that two windows do not
 * undo each other. Does nothing when the text is gone. Rejects with `StorageFault`.
 */
export async function changeText(id: string, change: (text: ShelfText) => ShelfChange): Promise<void> {
  const done = await told(async () => {
    const writing = (await open()).transaction('texts', 'readwrite');
    const stored = await writing.store.get(id);
    const [text] = unpackAll(stored ? [stored] : []);
    if (stored && text) void writing.store.put({ ...stored, ...change(text) }).catch(() => undefined);
    await writing.done;
    return text !== undefined;
  });
  if (done) news.tell({ put: [id], deleted: [] });
}

/** Deletes texts, and everything stored with them, for good. Rejects with `StorageFault`. */
export async function deleteTexts(ids: readonly string[]): Promise<void> {
  await told(async () => {
    const change = (await open()).transaction(['texts', 'kept'], 'readwrite');
    for (const id of ids) {
      void change.objectStore('texts').delete(id);
      void change.objectStore('kept').delete(id);
    }
    await change.done;
  });
  news.tell({ put: [], deleted: ids });
}

/** Whether two texts have the same words with the same counts, in any order. */
export function hasSameWords(
  { words, skipped }: Pick<ShelfText, 'words' | 'skipped'>,
  other: Pick<ShelfText, 'words' | 'skipped'>,
): boolean {
  if (skipped !== other.skipped || words.length !== other.words.length) return false;
  const counts = new Map<WordKey, number>(other.words);
  return words.every(([key, count]) => counts.get(key) === count);
}

/** Returns an id that no other text has. */
export function freeTextId(): string {
  return crypto.randomUUID();
}

/** Calls `onChange` when this or another window changes the shelf, until the signal is aborted. */
export function watchShelf(onChange: (news: ShelfNews) => void, signal: AbortSignal): void {
  news.watch(onChange, signal);
}

function pack({ words, ...rest }: ShelfText): StoredText {
  const sorted = words.toSorted(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return {
    ...rest,
    keys: sorted.map(([key]) => key).join(BETWEEN),
    counts: Uint32Array.from(sorted, ([, count]) => count),
  };
}

/** Unpacks the stored texts that can be read. */
function unpackAll(stored: readonly StoredText[]): ShelfText[] {
  return takeReadable(storedTextSchema, stored, 'host.shelfTextUnread').map(unpack);
}

function unpack({ keys, counts, ...rest }: StoredText): ShelfText {
  const list = keys === '' ? [] : keys.split(BETWEEN);
  return { ...rest, words: list.map((key, i) => [key, counts[i] ?? 0] as const) };
}

function withText({ isKept: _, ...rest }: ShelfText, text: string | undefined): WholeShelfText {
  return { ...rest, text: text ?? null };
}

function told<T>(work: () => Promise<T>): Promise<T> {
  return tellFault({ full: 'host.shelfFull', failed: 'host.shelfFailed' }, work);
}
