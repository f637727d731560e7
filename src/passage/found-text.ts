/** What is known of a text that comes to the desk. */
export interface FoundText {
  readonly title: string;
  readonly text: string;
  readonly url?: string | null;
  readonly byline?: string | null;
  readonly date?: string | null;
}
