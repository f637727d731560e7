/** A text that is brought to the desk, with the known details of its source. */
export interface FoundText {
  readonly title: string;
  readonly text: string;
  readonly url?: string | null;
  readonly byline?: string | null;
  readonly date?: string | null;
}
