/** The subject of a sentence, with the forms that agree with it. */
export interface Subject {
  /** The subject in the middle of a sentence: `the big dog`, `he`, `Wilma`. */
  readonly text: string;
  readonly number: 'I' | 'one' | 'many';
  /** The possessive of the subject: `his hat`; null where nobody can tell, as for a name. */
  readonly whose: string | null;
  /** The pronouns that would mean the same person again, separated by spaces: `me` for I. */
  readonly self: string;
}
