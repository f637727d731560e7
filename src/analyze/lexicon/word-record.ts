import type { Usage } from '../types.ts';

/** Letters with their sound (a grapheme-phoneme correspondence), before a pattern is named: `{ letters: 'ai', sound: 'EY' }`. */
export interface Correspondence {
  readonly letters: string;
  /** ARPAbet as in alignment/sounds.ts (`AX`, `IX`), joined by dots; `-` for silent. */
  readonly sound: string;
}

/** One way an ending or beginning is said: -ed as T; or the weak second word of a compound: the man of postman. */
export interface AffixForm extends Correspondence {
  readonly kind: 'suffix' | 'prefix' | 'compound';
}

/** The step from a base to the word; which base is found again from the letters. */
export interface MadeBy {
  readonly affix: AffixForm;
  /** Place of the base among the stems the word's letters allow (morphology/restore-stem.ts). */
  readonly stem: number;
  /** Place of the base's reading among its readings. */
  readonly reading: number;
  /**
   * The base loses a little of its last sound: the y of happy is weak in happily, the l of final is said once
   * in finally.
   */
  readonly lessened: boolean;
}

/**
 * The record of one reading in the table. `whole`: its units, and perhaps what it is made of (confusion, whose
 * -sion is one unit, of confuse). `affixed` and `compound` are put together from the readings of their parts.
 */
export type ReadingRecord =
  | { readonly kind: 'whole'; readonly units: readonly Correspondence[]; readonly madeBy: MadeBy | null }
  | { readonly kind: 'affixed'; readonly madeBy: MadeBy }
  | { readonly kind: 'compound'; readonly cut: number; readonly left: number; readonly right: number };

/** All the table holds of a word. `homograph`: its readings are different words (lead, bow). */
export interface WordRecord {
  readonly readings: readonly ReadingRecord[];
  readonly homograph: boolean;
}

/** A word as the table gives it back. */
export interface TableWord extends WordRecord {
  readonly usage: Usage;
}
