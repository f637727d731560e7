import type { Usage } from '../types.ts';

/**
 * Letters with their sound (a grapheme-phoneme correspondence), before the pattern is named: `{ letters: 'ai', sound:
 * 'EY' }`.
 */
export interface Correspondence {
  readonly letters: string;
  /** ARPAbet as in alignment/sounds.ts (`AX`, `IX`), joined by dots; `-` for silent letters. */
  readonly sound: string;
}

/** One pronunciation of an ending or beginning (-ed as T), or the weak second word of a compound (the man of postman). */
export interface AffixForm extends Correspondence {
  readonly kind: 'suffix' | 'prefix' | 'compound';
}

/** The step from a base to the word. The letters of the word give the base. */
export interface MadeBy {
  readonly affix: AffixForm;
  /** Index of the base among the stems that the word's letters allow (morphology/restore-stem.ts). */
  readonly stem: number;
  /** Index of the base's reading among all readings of the base. */
  readonly reading: number;
  /**
   * True if the last sound of the base is reduced: the y of happy is weak in happily, the l of final is pronounced only
   * once in finally.
   */
  readonly lessened: boolean;
}

/**
 * The record of one reading in the table.
 * - `whole` has its own units, and sometimes the word that it is made of: confusion, whose -sion is one unit, is made
 * of confuse.
 * - `affixed` and `compound` are put together from the readings of their parts.
 */
export type ReadingRecord =
  | { readonly kind: 'whole'; readonly units: readonly Correspondence[]; readonly madeBy: MadeBy | null }
  | { readonly kind: 'affixed'; readonly madeBy: MadeBy }
  | { readonly kind: 'compound'; readonly cut: number; readonly left: number; readonly right: number };

/** The table's record of a word. `homograph` means that its readings are different words (lead, bow). */
export interface WordRecord {
  readonly readings: readonly ReadingRecord[];
  readonly homograph: boolean;
}

/** A word as the table returns it. */
export interface TableWord extends WordRecord {
  readonly usage: Usage;
}
