import { readUnfitWords } from '../read-unfit-words.ts';
import { readOwnSwaps } from './read-own-swaps.ts';

let unfit: ReadonlySet<string> | undefined;
let own: ReadonlySet<string> = new Set();

const ENDING = /(?:s|ing)$/;

/** Whether a word may be in the table of swaps. Coarse words and insults may not, unless our own list has them (attack). */
export function isFitWord(word: string): boolean {
  unfit ??= listUnfit();
  return !unfit.has(word) && (own.has(word) || !unfit.has(word.replace(ENDING, '')));
}

/** Returns the indexes of the words that may be in the table. */
export function keepFit(words: readonly string[]): number[] {
  return words.flatMap((word, place) => (isFitWord(word) ? [place] : []));
}

function listUnfit(): ReadonlySet<string> {
  own = new Set(
    readOwnSwaps().flatMap(({ word, swaps, cues }) =>
      [word, ...swaps, ...cues].flatMap((text) => text.split(' ')),
    ),
  );
  return new Set([...readUnfitWords()].filter((word) => !own.has(word)));
}
