/** The text of a file of any kind. */
export interface OpenedText {
  /** Empty if the file has no title. */
  readonly title: string;
  /** The text, with a blank line between paragraphs. */
  readonly text: string;
}
