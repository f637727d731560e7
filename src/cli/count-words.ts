import { tokenize } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';

/** How often each word stands in a text, and how many tokens are no words to read. */
export function countWords(text: string): { words: ReadonlyMap<WordKey, number>; skipped: number } {
  const words = new Map<WordKey, number>();
  let skipped = 0;
  for (const { kind, key } of tokenize(text)) {
    if (kind === 'skipped') skipped++;
    else words.set(key, (words.get(key) ?? 0) + 1);
  }
  return { words, skipped };
}
