import type { WordCounts } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';
import type { ShadedLine } from './shade-line.ts';

/** The words of a passage with their counts, as the report wants them. */
export function countWords(text: string, shade: (line: string) => ShadedLine): WordCounts {
  const words = new Map<WordKey, number>();
  let skipped = 0;
  for (const line of text.split('\n')) {
    const shaded = shade(line);
    skipped += shaded.skipped;
    for (const { key } of shaded.words) words.set(key, (words.get(key) ?? 0) + 1);
  }
  return { words, skipped };
}
