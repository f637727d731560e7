import { openFile } from '../../passage/files/open-file.ts';
import type { OpenedBook, OpenedText } from '../../passage/files/opened-file.ts';
import { takeChapters } from '../../passage/files/take-chapters.ts';
import type { VettedText } from './add-to-shelf.ts';
import { countText } from './count-text.ts';

/**
 * Reads a file as one text, or a book as one text for each chapter from the first of its story on, since what stands before is title and
 * contents. Rejects with `FileFault`, or when aborted.
 */
export async function readFile(file: File, keepsText: boolean, signal: AbortSignal): Promise<VettedText[]> {
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

function listTexts(opened: OpenedText | OpenedBook): OpenedText[] {
  if (!('chapters' in opened)) return [opened];
  return opened.chapters
    .map((_, n) => n)
    .slice(opened.first)
    .map((n) => takeChapters(opened, new Set([n])));
}
