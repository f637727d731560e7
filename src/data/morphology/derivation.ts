import type { SpellingChange } from '../../analyze/types.ts';

/** The last step in the formation of a word: careless + ness, re + play, pan + cake. */
export interface Derivation {
  /** The rest of the word. For a compound, its first part. */
  readonly base: string;
  /** The suffix or prefix as spelt in the word. For a compound, its second part. */
  readonly affix: string;
  readonly kind: 'suffix' | 'prefix' | 'compound';
  readonly change: SpellingChange;
  /** The index of the word's pronunciation that fits. */
  readonly wordReading: number;
  /** The index of the base's pronunciation that fits, or -1 if the base is not pronounced unchanged (electricity). */
  readonly baseReading: number;
}
