import { settleCounts } from '../../analyze/index.ts';
import type { WordKey } from '../../analyze/types.ts';
import type { ShelfText } from '../../host/store/shelf-store.ts';
import { cutLine } from '../../passage/cut-line.ts';
import { createPause } from './create-pause.ts';

/** Words of a text with their counts, as the shelf keeps them. */
export type CountedText = Pick<ShelfText, 'words' | 'skipped'>;

/** Counts the words of a text line by line, leaving the page time in between. Rejects when aborted. */
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
