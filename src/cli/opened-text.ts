/** What a file says, whatever kind it is. */
export interface OpenedText {
  /** Empty where the file says none. */
  readonly title: string;
  /** A blank line between paragraphs. */
  readonly text: string;
}
