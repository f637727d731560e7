import type { Piece } from './cut-words.ts';
import { findForms } from './find-forms.ts';
import type { SwapTable } from './open-swaps.ts';

const LONGEST = 4;

/**
 * Returns whether the word at `at` belongs to a phrase that has its meaning only as a whole: “fire” in “fire trucks”,
 * “look” in “looked up”, “course” in “of course”. Counter-example: “course” in “the course of a ship”.
 */
export function isBound(pieces: readonly Piece[], at: number, table: SwapTable): boolean {
  for (let length = 2; length <= LONGEST; length++) {
    for (let first = Math.max(0, at - length + 1); first <= at; first++) {
      const words = pieces.slice(first, first + length);
      if (words.length === length && isPhraseOf(words, 0, '', table)) return true;
    }
  }
  return false;
}

/** Returns whether the pieces from `next` on complete a phrase. Each piece counts as it is written or in its base form. */
function isPhraseOf(words: readonly Piece[], next: number, before: string, table: SwapTable): boolean {
  const piece = words[next];
  if (piece === undefined) return table.isPhrase(before);
  const bases = new Set([piece.lower, ...findForms(piece.lower, table).map(({ lemma }) => lemma)]);
  return [...bases].some((base) =>
    isPhraseOf(words, next + 1, before === '' ? base : `${before} ${base}`, table),
  );
}
