import { readPhrases } from '../read-word-list.ts';
import type { Synsets } from './read-synsets.ts';

/**
 * Returns phrases in base forms, as the table stores them: the number of words, then the numbers of the words. The
 * phrases are WordNet's entries of two to four words (sea lion, look up) and the function-word phrases of phrases.txt.
 * Names and phrases with a word that the table lacks are left out.
 */
export function listPhrases({ byId }: Synsets, ids: ReadonlyMap<string, number>): number[] {
  const phrases = readPhrases('phrases.txt');
  for (const { words } of byId.values()) {
    for (const word of words) if (/^[a-z]+(?: [a-z]+){1,3}$/.test(word)) phrases.add(word);
  }
  return [...phrases].sort().flatMap((phrase) => {
    const words = phrase.split(' ').map((word) => ids.get(word));
    return words.includes(undefined) ? [] : [words.length, ...(words as number[])];
  });
}
