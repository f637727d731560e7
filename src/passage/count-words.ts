import { settleCounts, type WordCounts } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';
import type { CutLine } from './cut-line.ts';

/** Returns the words of a passage with their counts, in the form the report needs. The lines may be shaded or only cut. */
export function countWords(text: string, cut: (line: string) => CutLine): WordCounts {
  const words = new Map<WordKey, number>();
  let skipped = 0;
  for (const line of text.split('\n')) {
    const found = cut(line);
    skipped += found.skipped;
    for (const { key } of found.words) words.set(key, (words.get(key) ?? 0) + 1);
  }
  return { words: settleCounts(words), skipped };
}
