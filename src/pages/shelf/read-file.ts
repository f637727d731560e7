import { settleCounts } from '../../analyze/index.ts';
import type { WordKey } from '../../analyze/types.ts';
import type { ShelfText } from '../../host/store/shelf-store.ts';
import { cutLine } from '../../passage/cut-line.ts';
import { isPictureFile } from '../../passage/files/is-picture.ts';
import { openFile } from '../../passage/files/open-file.ts';
import type { OpenedBook, OpenedText } from '../../passage/files/opened-file.ts';
import { takeChapters } from '../../passage/files/take-chapters.ts';
import { createPause } from '../../ui/create-pause.ts';
import type { VettedText } from './add-to-shelf.ts';

/**
 * Reads a file as one text. A book gives one text for each chapter, from the first chapter of its story on, since the
 * chapters before are title and contents. Rejects with `FileFault`, or when aborted.
 */
export async function readFile(file: File, keepsText: boolean, signal: AbortSignal): Promise<VettedText[]> {
  if (await isPictureFile(file)) return [await readPicture(file, keepsText, signal)];
  const opened = await openFile(file);
  const texts: VettedText[] = [];
  for (const found of listTexts(opened)) {
    signal.throwIfAborted();
    const counted = await countText(found.text, signal);
    const { title, url = null, byline = null, date = null, text } = found;
    texts.push({ ...counted, title, url, byline, date, text: keepsText ? text : null });
  }
  return texts;
}

/** Reads a picture of text on this machine. Words with an unsure reading count as skipped. */
async function readPicture(file: File, keepsText: boolean, signal: AbortSignal): Promise<VettedText> {
  const { readPictureFile } = await import('../../passage/files/read-picture-file.ts');
  const { title, text, sureText, unsure } = await readPictureFile(file, signal);
  const { words, skipped } = await countText(sureText, signal);
  return {
    title,
    url: null,
    byline: null,
    date: null,
    words,
    skipped: skipped + unsure,
    text: keepsText ? text : null,
  };
}

function listTexts(opened: OpenedText | OpenedBook): OpenedText[] {
  if (!('chapters' in opened)) return [opened];
  return opened.chapters
    .map((_, n) => n)
    .slice(opened.first)
    .map((n) => takeChapters(opened, new Set([n])));
}

/** The words of a text with their counts, in the form that the shelf stores. */
type CountedText = Pick<ShelfText, 'words' | 'skipped'>;

/** Counts the words of a text line by line, with pauses so that the page stays responsive. Rejects when aborted. */
export async function countText(text: string, signal: AbortSignal): Promise<CountedText> {
  const pause = createPause();
  const words = new Map<WordKey, number>();
  let skipped = 0;
  for (const line of text.split('\n')) {
    await pause();
    signal.throwIfAborted();
    const cut = cutLine(line);
    skipped += cut.skipped;
    for (const { key } of cut.words) words.set(key, (words.get(key) ?? 0) + 1);
  }
  return { words: [...settleCounts(words)], skipped };
}
