import type { WordKey } from '../types.ts';

/** Numbers for word keys. With them, many texts share one list of words. */
export interface WordNumbers {
  /** The keys by number, in the order of their first occurrence. */
  readonly keys: readonly WordKey[];
  /** Returns the number of a key. A new key gets a new number. */
  numberOf(key: WordKey): number;
}

/** The words of one text: number, count, number, count, … This format is small enough for ten thousand texts in memory. */
export type NumberedWords = Uint32Array;

/** Creates an empty list of word numbers. */
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

/** Converts the words of a text to their numbers. */
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
