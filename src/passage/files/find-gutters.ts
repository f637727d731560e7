import type { PdfPiece } from './pdf-text.ts';

/** The fewest rows that have a gap in the same place where columns are separated. */
const ROWS = 4;
/** The narrowest gap between columns, in multiples of the letter size. Narrower gaps are blanks in justified lines. */
const GAP = 0.8;
/** The fewest letters, on average, that the text on both sides of a gap has if it is prose. A table has fewer. */
const PROSE = 18;
/**
 * Narrow columns are prose if they have this many letters in this many rows, and half of the rows continue in the
 * middle of a sentence.
 */
const NARROW_PROSE = 10;
const NARROW_ROWS = 8;

interface Blank {
  readonly left: number;
  readonly right: number;
  readonly letters: number;
  /** The number of sides of the gap (0 to 2) that begin with a small letter. */
  readonly goOn: number;
}

/**
 * Returns the places where columns of prose are separated, in points from the left edge. This is for a page that is
 * drawn row by row across its columns. Returns none in a table, nor where each column is drawn by itself, as in nearly
 * every PDF.
 */
export function findGutters(pieces: readonly PdfPiece[]): number[] {
  const gaps = findBlanks(pieces.filter(({ text }) => text.trim() !== ''));
  const gutters: number[] = [];
  for (let left = gaps; left.length >= ROWS; ) {
    const [place, across] = left
      .map(({ right }) => {
        const place = right - 1;
        return [place, left.filter((gap) => gap.left < place && place < gap.right)] as const;
      })
      .reduce((best, one) => (one[1].length > best[1].length ? one : best));
    if (across.length < ROWS) break;
    const letters = across.reduce((sum, gap) => sum + gap.letters, 0) / across.length;
    const goOn = across.reduce((sum, gap) => sum + gap.goOn, 0) / across.length / 2;
    const isNarrow = letters >= NARROW_PROSE && across.length >= NARROW_ROWS && goOn >= 0.5;
    if (letters >= PROSE || isNarrow) gutters.push(place);
    left = left.filter((gap) => !across.includes(gap));
  }
  return gutters.sort((one, other) => one - other);
}

/**
 * Returns the gaps between neighbouring pieces that are drawn one after the other in a row. Each gap has the number of
 * letters of its shorter neighbour.
 */
function findBlanks(pieces: readonly PdfPiece[]): Blank[] {
  const parts: { left: number; right: number; letters: number; y: number; size: number; goesOn: number }[] =
    [];
  for (const { text, x, y, width, size } of pieces) {
    const last = parts.at(-1);
    const isBeside = last && Math.abs(last.y - y) < size / 2 && x > last.left;
    if (isBeside && x - last.right < GAP * size) {
      last.right = x + width;
      last.letters += text.length;
    } else {
      const goesOn = /^\p{Ll}/u.test(text) ? 1 : 0;
      parts.push({ left: x, right: x + width, letters: text.length, y, size, goesOn });
    }
  }
  return parts.flatMap((part, n) => {
    const before = parts[n - 1];
    if (!before || Math.abs(before.y - part.y) >= part.size / 2 || part.left <= before.right) return [];
    const letters = Math.min(before.letters, part.letters);
    return [{ left: before.right, right: part.left, letters, goOn: before.goesOn + part.goesOn }];
  });
}
