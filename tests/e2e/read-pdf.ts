import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PdfLine {
  /** The distance from the left edge of the paper to the first letter, in points. */
  readonly x: number;
  readonly text: string;
  /** The number in the margin beside the line. */
  readonly number: number | null;
}

export interface PdfPage {
  /** In points. */
  readonly width: number;
  readonly height: number;
  readonly lines: readonly PdfLine[];
}

interface Piece {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly text: string;
}

/** The font size of numbers in the margin. No other text has this size. */
const NUMBER_SIZE = 11;

/**
 * Reads the pages of a PDF as lines from top to bottom. pdf.js is an outside reader that shows the text that will be on
 * paper.
 */
export async function readPdf(bytes: Uint8Array): Promise<PdfPage[]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const pdf = await task.promise;
  const pages: PdfPage[] = [];
  for (let n = 1; n <= pdf.numPages; n++) {
    const page = await pdf.getPage(n);
    const { width, height } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent();
    const pieces = items.flatMap((item): Piece[] => {
      if (!('str' in item) || item.str === '') return [];
      const [, , , size, x, y] = item.transform as number[];
      return [{ x: x!, y: y!, size: size!, text: item.str }];
    });
    pages.push({ width, height, lines: gather(pieces) });
  }
  await task.destroy();
  return pages;
}

function gather(pieces: readonly Piece[]): PdfLine[] {
  const rows: Piece[][] = [];
  for (const piece of [...pieces].sort((a, b) => b.y - a.y)) {
    const row = rows.at(-1);
    if (row && row[0]!.y - piece.y < 2) row.push(piece);
    else rows.push([piece]);
  }
  return rows
    .map((row) => {
      const isNumber = ({ size, text }: Piece) =>
        Math.abs(size - NUMBER_SIZE) < 0.3 && /^\d+$/.test(text.trim());
      const written = row.filter((piece) => !isNumber(piece)).sort((a, b) => a.x - b.x);
      const number = row.find(isNumber);
      return {
        x: written[0]?.x ?? 0,
        text: written
          .map(({ text }) => text)
          .join('')
          .replace(/\s+/g, ' ')
          .trim(),
        number: number ? Number(number.text) : null,
      };
    })
    .filter(({ text, number }) => text !== '' || number !== null);
}
