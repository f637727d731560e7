import type { WordKey } from '../types.ts';

/** Numbers of word keys, so that many texts share one list of words. */
export interface WordNumbers {
  /** The keys by their number, in the order in which they were met. */
  readonly keys: readonly WordKey[];
  /** The number of a key; a new one where it was not met before. */
  numberOf(key: WordKey): number;
}

/** The words of one text: number, count, number, count, … Small enough that ten thousand texts fit into memory. */
export type NumberedWords = Uint32Array;

/** Begins a list of words that has none yet. */
export function createWordNumbers(): WordNumbers {
  const keys: WordKey[] = [];
  const numbers = new Map<WordKey, number>();
  return {
    keys,
    numberOf(key) {
      const known = numbers.get(key);
      if (known !== undefined) return known;
      numbers.set(key, keys.length);
      return keys.push(key) - 1;
    },
  };
}

/** The words of a text by their numbers. */
export function numberWords(
  words: readonly (readonly [WordKey, number])[],
  numbers: WordNumbers,
): NumberedWords {
  const numbered = new Uint32Array(words.length * 2);
  words.forEach(([key, count], i) => {
    numbered[i * 2] = numbers.numberOf(key);
    numbered[i * 2 + 1] = count;
  });
  return numbered;
}
