import type { Lexicon } from '../../src/analyze/index.ts';

/** Returns the entries of a word list that the table lacks, because they could not be aligned completely. */
export function findUnaligned(words: Iterable<string>, lexicon: Pick<Lexicon, 'find'>): string[] {
  return [...words].filter((word) => lexicon.find(word) === null);
}
