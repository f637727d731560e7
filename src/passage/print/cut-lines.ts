import { type SheetRun, textOfRuns } from './make-sheet.ts';

/** Cuts runs into lines that begin at the given offsets. Spaces at the end of a line are removed, as in print. */
export function cutLines(runs: readonly SheetRun[], starts: readonly number[]): SheetRun[][] {
  const text = textOfRuns(runs);
  return starts.map((start, i) => {
    const length = text.slice(start, starts[i + 1] ?? text.length).trimEnd().length;
    return sliceRuns(runs, start, start + length);
  });
}

/**
 * Returns the number of words that have begun by the end of each line. A word includes its hyphens and apostrophes, and
 * a number counts as a word (well-kept, Otto's, 40). A dash separates two words (late—and).
 */
export function countByLine(text: string, starts: readonly number[]): number[] {
  const words = [...text.matchAll(/[\p{L}\p{N}][^\s–—]*/gu)].map(({ index }) => index);
  return starts.map((_, i) => {
    const end = starts[i + 1] ?? text.length;
    return words.filter((at) => at < end).length;
  });
}

function sliceRuns(runs: readonly SheetRun[], start: number, end: number): SheetRun[] {
  let at = 0;
  return runs.flatMap(({ text, fresh }) => {
    const from = at;
    at += text.length;
    const piece = text.slice(Math.max(start - from, 0), Math.max(end - from, 0));
    return piece === '' ? [] : [{ text: piece, fresh }];
  });
}
