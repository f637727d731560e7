import { findGutters } from './find-gutters.ts';
import type { PdfLine, PdfPiece, PdfSpan } from './pdf-text.ts';

/**
 * Widths of gaps, in multiples of the letter size of the line. A gap wider than `SPACE` is a space, and a gap wider
 * than `COLUMN` separates columns.
 */
const SPACE = 0.15;
const COLUMN = 2.5;

/**
 * Returns the lines of a page in reading order. That is the order in which the lines are drawn, except where rows are
 * drawn across columns. Raised footnote marks are left out.
 */
export function findPdfLines(pieces: readonly PdfPiece[], page: number): PdfLine[] {
  const gutters = findGutters(pieces);
  const isBeside = (line: PdfLine, piece: PdfPiece): boolean =>
    isNear(line, piece) && !gutters.some((gutter) => line.right <= gutter && gutter <= piece.x);
  const lines: OpenLine[] = [];
  let line: OpenLine | null = null;
  for (const piece of pieces) {
    const text = piece.text.replace(/[\ufb00-\ufb06]/g, (joined) => joined.normalize('NFKC'));
    if (text.trim() === '') {
      if (line && text !== '' && isBeside(line, piece)) addBlank(line);
      continue;
    }
    if (line && isBeside(line, piece)) {
      if (isRaisedMark(line, piece)) continue;
      if (piece.x - line.right > SPACE * line.size && !/^\s/.test(text)) addBlank(line);
      line.text += text;
      line.spans.push(spanOf(piece, text));
      line.right = Math.max(line.right, piece.x + piece.width);
      line.size = Math.max(line.size, piece.size);
    } else {
      const { x, y, width, size } = piece;
      line = { text, x, right: x + width, y, size, page, spans: [spanOf(piece, text)] };
      lines.push(line);
    }
  }
  for (const done of lines) done.text = done.text.replace(/\s+/g, ' ').trim();
  return readByColumns(
    lines.filter(({ text }) => text !== ''),
    gutters,
  );
}

/** A line that is being put together. */
type OpenLine = PdfLine & { readonly spans: PdfSpan[] };

function spanOf({ x, width, family = 'sans-serif' }: PdfPiece, text: string): PdfSpan {
  return { text, x, width, family };
}

function addBlank(line: OpenLine): void {
  if (/\s$/.test(line.text)) return;
  line.text += ' ';
  line.spans.at(-1)!.text += ' ';
}

function isNear(line: PdfLine, { x, y, size }: PdfPiece): boolean {
  const em = Math.max(line.size, size);
  const gap = x - line.right;
  return Math.abs(y - line.y) < em / 2 && gap > -em && gap < COLUMN * em;
}

function isRaisedMark(line: PdfLine, { text, y, size }: PdfPiece): boolean {
  return size < line.size * 0.8 && y > line.y + line.size * 0.15 && /^\s*(\d{1,3}|[*†‡]+)\s*$/.test(text);
}

/**
 * Returns the lines of a page that is drawn row by row, in reading order. Each column is read from top to bottom,
 * between the lines that run across the columns.
 */
function readByColumns(lines: readonly PdfLine[], gutters: readonly number[]): PdfLine[] {
  if (gutters.length === 0) return [...lines];
  const read: PdfLine[] = [];
  const columns: PdfLine[][] = Array.from({ length: gutters.length + 1 }, () => []);
  const end = (): void => {
    for (const column of columns) read.push(...column.splice(0));
  };
  for (const line of lines) {
    const column = gutters.filter((gutter) => gutter <= line.x).length;
    const isAcross = column < gutters.length && line.right > gutters[column]!;
    if (isAcross) end();
    columns[column]!.push(line);
    if (isAcross) end();
  }
  end();
  return read;
}
