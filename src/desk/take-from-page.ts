import { sayDay } from '../files/say-day.ts';
import { askPage, askWords, listFrames } from '../host/client.ts';
import { loadPassages } from '../host/passages-store.ts';
import { writeLines } from '../passage/passage-lines.ts';
import { addPassage } from './new-passage.ts';

/** Why nothing could be taken from a page, in a sentence with the next step. */
export class TakeFault extends Error {}

/** What came of taking a text from a page. */
export interface Taken {
  readonly id: string;
  /** How many pictures were left out. */
  readonly pictures: number;
}

/**
 * Puts the text that is checked on a shaded page on the desk, with where it comes from; one that lies there already is
 * found again. Rejects with `TakeFault` when the
 * page is no longer shaded or has no words, with `StorageFault` when it cannot be kept.
 */
export async function takeFromPage(tab: number): Promise<Taken> {
  const words = await askWords(tab);
  if (!words)
    throw new TakeFault(
      'The page is no longer shaded. Go back to it, press the Wordreach button, and take it again.',
    );
  const frames = await listFrames(tab).catch(() => [0]);
  const parts = await Promise.all(
    frames.map((frame) => askPage(tab, 'takePassage', undefined as never, frame)),
  );
  const lines = parts.flatMap((part) => part?.lines ?? []);
  if (lines.length === 0)
    throw new TakeFault(
      'There are no words in what is checked on the page. Choose “Whole page” in the panel, or select the text.',
    );
  const text = writeLines(lines);
  const pictures = parts.reduce((sum, part) => sum + (part?.pictures ?? 0), 0);
  const before = (await loadPassages()).find(
    ({ source, original }) => source.url === words.url && original === text,
  );
  if (before) return { id: before.id, pictures: 0 };
  const id = await addPassage({
    title: words.title || lines[0]!.text.slice(0, 60),
    text,
    url: words.url,
    byline: words.byline,
    date: sayDay(words.date),
  });
  return { id, pictures };
}
