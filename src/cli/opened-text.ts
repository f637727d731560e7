/** The text of a file of any kind. */
export interface OpenedText {
  /** Empty where the file says none. */
  readonly title: string;
  /** A blank line between paragraphs. */
  readonly text: string;
}
