import { readPhrases } from '../read-word-list.ts';
import type { Synsets } from './read-synsets.ts';

/**
 * Base forms of words that belong together, as the table keeps them: how many, then the words' numbers. From WordNet's
 * entries of two to four words (sea lion, look up) and the small ones of phrases.txt; left out are names and what has a word
 * that the table lacks.
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
