import { keyOfPart, splitKey } from '../homographs/word-key.ts';
import type { WordKey } from '../types.ts';

/**
 * The key of a word whose place explains its capital, as the rest of the text settles it: `Biscuit^` becomes `Biscuit`
 * where the text has Biscuit with a capital inside sentences (a cat named Biscuit), and no more often with small letters. Every
 * other key stays. `countOf` says how often the text has a key.
 */
export function settleCapital(key: WordKey, countOf: (key: WordKey) => number): WordKey {
  if (splitKey(key).capital !== 'opens') return key;
  const shown = key.slice(0, -1);
  const asName = countOf(shown) + countOf(keyOfPart(shown));
  return asName > 0 && asName >= countOf(shown.toLowerCase()) ? shown : key;
}

/** The counts of a whole text with its capitals settled; the counts given are not changed. */
export function settleCounts(counts: ReadonlyMap<WordKey, number>): Map<WordKey, number> {
  const countOf = (key: WordKey): number => counts.get(key) ?? 0;
  const settled = new Map<WordKey, number>();
  for (const [key, count] of counts) {
    const as = settleCapital(key, countOf);
    settled.set(as, (settled.get(as) ?? 0) + count);
  }
  return settled;
}
