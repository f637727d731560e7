import { useEffect, useState } from 'preact/hooks';
import { type Analyzer, rememberWords, type WordWeigher } from '../../analyze/index.ts';
import { loadEngine } from '../../host/data/load-engine.ts';
import { putFirstShelf } from '../../host/store/first-shelf.ts';
import {
  countTexts,
  loadTexts,
  readShelf,
  type ShelfNews,
  watchShelf,
} from '../../host/store/shelf-store.ts';
import { createPause } from '../../ui/create-pause.ts';
import { addFirstShelf } from './first-shelf.ts';
import { createShelfIndex, type IndexedText, type ShelfIndex } from './shelf-index.ts';

/** The whole shelf, loaded into memory. */
export interface ReadyShelf {
  readonly kind: 'ready';
  readonly index: ShelfIndex;
  /** The texts of the index. Whenever a text changes, this is a new list. */
  readonly texts: readonly IndexedText[];
  readonly engine: Analyzer;
  /** The engine's memory of the words of the shelf. */
  readonly weigher: WordWeigher;
}

/** The state of the shelf as it is shown. */
export type Shelf =
  | { readonly kind: 'loading'; readonly done: number; readonly of: number }
  | { readonly kind: 'failed'; readonly why: string }
  | ReadyShelf;

/** Loads the whole shelf in slices, together with the requirements of its words, and keeps it equal to the stored shelf. */
export function useShelf(): Shelf {
  const [shelf, setShelf] = useState<Shelf>({ kind: 'loading', done: 0, of: 0 });
  useEffect(() => {
    const controller = new AbortController();
    void followShelf(setShelf, controller.signal).catch((error: unknown) => {
      if (!controller.signal.aborted)
        setShelf({ kind: 'failed', why: error instanceof Error ? error.message : String(error) });
    });
    return () => controller.abort();
  }, []);
  return shelf;
}

async function followShelf(show: (shelf: Shelf) => void, signal: AbortSignal): Promise<void> {
  const index = createShelfIndex();
  // Changes during the loading are applied afterwards.
  let news: ShelfNews[] = [];
  let follow = (given: ShelfNews): void => void news.push(given);
  watchShelf((given) => follow(given), signal);
  // If the first texts cannot be added, the shelf opens all the same and tries again the next time.
  await putFirstShelf(addFirstShelf).catch(() => undefined);
  const [engine, of] = await Promise.all([loadEngine(), countTexts()]);
  const weigher = rememberWords(engine);
  const pause = createPause();
  let weighed = 0;
  const weighAll = async (): Promise<void> => {
    for (; weighed < index.numbers.keys.length; weighed++) {
      await pause();
      weigher.weigh(index.numbers.keys[weighed]!);
    }
  };
  show({ kind: 'loading', done: 0, of });
  for await (const slice of readShelf()) {
    if (signal.aborted) return;
    index.put(slice);
    await weighAll();
    show({ kind: 'loading', done: index.texts.length, of: Math.max(of, index.texts.length) });
  }
  const takeIn = async ({ put, deleted }: ShelfNews): Promise<void> => {
    const texts = await loadTexts(put);
    index.delete([...deleted, ...put.filter((id) => !texts.some((text) => text.id === id))]);
    index.put(texts);
    await weighAll();
    if (!signal.aborted) show({ kind: 'ready', index, texts: index.texts, engine, weigher });
  };
  let last: Promise<void> = Promise.resolve();
  follow = (given) => {
    // If one change cannot be loaded, the next change or a reload of the page brings it.
    last = last.then(() => takeIn(given)).catch(() => undefined);
  };
  show({ kind: 'ready', index, texts: index.texts, engine, weigher });
  for (const given of news) follow(given);
  news = [];
}
