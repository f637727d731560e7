import type { PdfPiece } from './pdf-text.ts';

/** So many rows at least have a gap in the same place where columns part. */
const ROWS = 4;
/** Narrower gaps are those of stretched lines, in the size of their letters. */
const GAP = 0.8;
/** What stands on both sides of a gap is prose when it has so many letters on average; a table has less. */
const PROSE = 18;

interface Blank {
  readonly left: number;
  readonly right: number;
  readonly letters: number;
}

/**
 * Where columns of prose part on a page that is drawn row by row, across them: places from the left edge, in points. None
 * where each column is drawn by itself, as nearly every PDF has it, and none in a table.
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
    if (letters >= PROSE) gutters.push(place);
    left = left.filter((gap) => !across.includes(gap));
  }
  return gutters.sort((one, other) => one - other);
}

/** Gaps between pieces that are drawn one after the other in a row, with the letters of the shorter side. */
function findBlanks(pieces: readonly PdfPiece[]): Blank[] {
  const parts: { left: number; right: number; letters: number; y: number; size: number }[] = [];
  for (const { text, x, y, width, size } of pieces) {
    const last = parts.at(-1);
    const isBeside = last && Math.abs(last.y - y) < size / 2 && x > last.left;
    if (isBeside && x - last.right < GAP * size) {
      last.right = x + width;
      last.letters += text.length;
    } else parts.push({ left: x, right: x + width, letters: text.length, y, size });
  }
  return parts.flatMap((part, n) => {
    const before = parts[n - 1];
    if (!before || Math.abs(before.y - part.y) >= part.size / 2 || part.left <= before.right) return [];
    return [{ left: before.right, right: part.left, letters: Math.min(before.letters, part.letters) }];
  });
}
