import type { SpellingChange } from '../../analyze/types.ts';

/** The outermost step in the making of a word: careless + ness, re + play, pan + cake. */
export interface Derivation {
  /** The rest of the word; for a compound its first part. */
  readonly base: string;
  /** Suffix or prefix as spelt in the word; for a compound its second part. */
  readonly affix: string;
  readonly kind: 'suffix' | 'prefix' | 'compound';
  readonly change: SpellingChange;
  /** Index of the pronunciation of the word that fits. */
  readonly wordReading: number;
  /** Index of the pronunciation of the base that fits, or -1 when the base is not heard unchanged (electricity). */
  readonly baseReading: number;
}
