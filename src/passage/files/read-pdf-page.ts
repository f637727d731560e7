import type { PDFPageProxy } from 'pdfjs-dist';
import { findPdfLines } from './pdf-lines.ts';
import type { PdfPage, PdfPiece } from './pdf-text.ts';

/** Options for reading PDF files. No script in a file runs, and nothing else is loaded for a file. */
export const PDF_OPTIONS = {
  verbosity: 0,
  useWasm: false,
  enableXfa: false,
  isEvalSupported: false,
} as const;

/**
 * The tangent of 20 degrees. Text that is turned by more than this angle from a quarter turn is a stamp across the
 * page.
 */
const ASLANT = Math.tan((20 * Math.PI) / 180);

type Turn = PdfPage['turn'];
type Matrix = readonly [number, number, number, number, number, number];

/**
 * Reads the lines of a page in the direction of most of its text, wherever the top of the page is. Text in another
 * direction belongs to the margin or is a stamp, and is skipped. `n` is the page number, from 0.
 */
export async function readPdfPage(page: PDFPageProxy, n: number): Promise<PdfPage> {
  const { width, height, transform } = page.getViewport({ scale: 1 });
  const { items, styles } = await page.getTextContent();
  const turned: { turn: Turn; piece: PdfPiece }[] = [];
  const letters = [0, 0, 0, 0];
  for (const item of items) {
    if (!('str' in item)) continue;
    const [a, b, c, d, x, y] = multiply(transform as unknown as Matrix, item.transform as unknown as Matrix);
    const turn = turnOf(a, b);
    if (turn === null) continue;
    letters[turn]! += item.str.trim().length;
    turned.push({
      turn,
      piece: {
        text: item.str,
        ...upright(turn, x, y, width, height),
        width: item.width,
        size: Math.hypot(c, d) || item.height || 1,
        family: styles[item.fontName]?.fontFamily ?? 'sans-serif',
      },
    });
  }
  const turn = letters.indexOf(Math.max(...letters)) as Turn;
  const pieces = turned.filter((one) => one.turn === turn).map(({ piece }) => piece);
  return { width, height, turn, lines: findPdfLines(pieces, n) };
}

/**
 * Returns the number of clockwise quarter turns for text that runs this far to the right and down. Returns null between
 * quarter turns.
 */
function turnOf(right: number, down: number): Turn | null {
  const [long, short] = Math.abs(right) >= Math.abs(down) ? [right, down] : [down, right];
  if (Math.abs(short) > Math.abs(long) * ASLANT) return null;
  if (long === right) return right >= 0 ? 0 : 2;
  return down >= 0 ? 1 : 3;
}

/** Converts a position on the page as shown (y points down) to a position on the page as its text is read (y points up). */
function upright(turn: Turn, x: number, y: number, width: number, height: number): { x: number; y: number } {
  switch (turn) {
    case 0:
      return { x, y: height - y };
    case 1:
      return { x: y, y: x };
    case 2:
      return { x: width - x, y };
    case 3:
      return { x: height - y, y: width - x };
  }
}

function multiply([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}
