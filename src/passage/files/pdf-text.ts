/**
 * A piece of text as a PDF draws it. Lengths are in points, and y goes upwards. The page is turned so that most of its
 * text runs from left to right.
 */
export interface PdfPiece {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
  /** The kind of font: serif, sans-serif or monospace. */
  readonly family?: string;
}

/** Pieces of one line that follow each other, with the blanks between them. */
export interface PdfSpan {
  text: string;
  readonly x: number;
  width: number;
  readonly family: string;
  /** Whether the text was read in a picture and the reading is not sure. */
  readonly isUnsure?: boolean;
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
  readonly spans: readonly PdfSpan[];
}

/** The content of a page. The page's size and `turn` tell where the lines are on the page. */
export interface PdfPage {
  /** As it is shown, in points. */
  readonly width: number;
  readonly height: number;
  /** The number of quarter turns, clockwise, of the text on the page as it is shown. */
  readonly turn: 0 | 1 | 2 | 3;
  readonly lines: readonly PdfLine[];
}

/**
 * How a line is joined to the next line:
 * - `blank`: with a blank
 * - `none`: directly (well-known)
 * - `hyphen`: without its last character, a hyphen (lan-tern)
 */
export type PdfJoint = 'blank' | 'none' | 'hyphen';

/** Lines of a PDF that together make one line of a passage. */
export interface PdfParagraph {
  readonly kind: 'heading' | 'item' | 'paragraph';
  readonly level: number;
  readonly text: string;
  /** The lines of the paragraph on the pages. The joint of the last line does not count. */
  readonly parts: readonly { readonly line: PdfLine; readonly joint: PdfJoint }[];
}

/** Tells whether lines contain any text to read. */
export function hasLetters(lines: readonly PdfLine[]): boolean {
  return lines.some(({ text }) => /\p{L}/u.test(text));
}
