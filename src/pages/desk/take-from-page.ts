import { addPassageOnce } from '../../passage/add-passage.ts';
import { sayDay } from '../../passage/files/say-day.ts';
import { readPageText } from '../../passage/read-page-text.ts';

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
  const { id, isNew } = await addPassageOnce({
    title: page.title,
    text,
    url: page.url,
    byline: page.byline,
    date: sayDay(page.date),
  });
  return { id, pictures: isNew ? pictures : 0 };
}
