/** A piece of text as a PDF draws it; lengths in points, y upwards. */
export interface PdfPiece {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
}

/** One line of a page. */
export interface PdfLine {
  text: string;
  readonly x: number;
  right: number;
  readonly y: number;
  size: number;
  /** From 0. */
  readonly page: number;
}
