import type { Lexicon } from '../../src/analyze/index.ts';

/** Entries of a word list the table lacks: what could not be aligned with nothing left over. */
export function findUnaligned(words: Iterable<string>, lexicon: Pick<Lexicon, 'find'>): string[] {
  return [...words].filter((word) => lexicon.find(word) === null);
}
