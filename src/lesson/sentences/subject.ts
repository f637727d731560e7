/** Who a sentence is about, with what agrees with it. */
export interface Subject {
  /** In the middle of a sentence: `the big dog`, `he`, `Wilma`. */
  readonly text: string;
  readonly number: 'I' | 'one' | 'many';
  /** Whose: `his hat`; null where nobody can tell, as of a name. */
  readonly whose: string | null;
  /** The one pronoun that would be the same person again: `me` for I. */
  readonly self: string;
}
