/** A text that comes to the desk, with its source as far as it is known. */
export interface FoundText {
  readonly title: string;
  readonly text: string;
  readonly url?: string | null;
  readonly byline?: string | null;
  readonly date?: string | null;
}
