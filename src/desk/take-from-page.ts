import { sayDay } from '../files/say-day.ts';
import { loadPassages } from '../host/passages-store.ts';
import { addPassage } from '../passage/add-passage.ts';
import { readPageText } from '../passage/read-page-text.ts';

/** What came of taking a text from a page. */
export interface Taken {
  readonly id: string;
  /** How many pictures were left out. */
  readonly pictures: number;
}

/**
 * Puts the text that is checked on a shaded page on the desk, with where it comes from; one that lies there already is
 * found again. Rejects with `TakeFault` when the page is no longer shaded or has no words, with `StorageFault` when it
 * cannot be kept.
 */
export async function takeFromPage(tab: number): Promise<Taken> {
  const { page, text, pictures } = await readPageText(tab);
  const before = (await loadPassages()).find(
    ({ source, original }) => source.url === page.url && original === text,
  );
  if (before) return { id: before.id, pictures: 0 };
  const id = await addPassage({
    title: page.title,
    text,
    url: page.url,
    byline: page.byline,
    date: sayDay(page.date),
  });
  return { id, pictures };
}
