import type { PictureLine } from './picture-reading.ts';

/** A line of a text that was read in several pictures, one after the other. */
export interface ScreenLine extends PictureLine {
  /** In which picture it is, from 0. */
  readonly screen: number;
}

/** Several screens as one text. */
export interface JoinedScreens {
  readonly lines: readonly ScreenLine[];
  /** The lines of the last screen, and where they go: behind or before the lines there were. */
  readonly added: readonly ScreenLine[];
  /** `apart`: no line of it was there before, so it is put at the end. */
  readonly where: 'after' | 'before' | 'nothing' | 'apart';
}

/** So many lines at an edge may be cut through and read wrongly. */
const CUT = 2;
/** Lines with fewer letters are alike by chance. */
const FEW_LETTERS = 12;
/** So many letters have to be alike before two screens are said to overlap. */
const LEAST = 20;
/** Lines with so much in common are one line read twice. */
const ALIKE = 0.75;
/** An overlap is looked for among so many lines of either end. */
const REACH = 300;

/**
 * Adds the new lines in a screen of a long document to the lines read before, by the lines both have: below them when the teacher scrolled down,
 * above it when up. Lines at the edge of a screen may be cut through, so the other screen's are taken there.
 */
export function joinScreens(
  before: readonly ScreenLine[],
  read: readonly PictureLine[],
  screen: number,
): JoinedScreens {
  const lines = read.map((line): ScreenLine => ({ ...line, screen }));
  if (before.length === 0) return { lines, added: lines, where: 'after' };
  if (lines.length === 0) return { lines: before, added: [], where: 'nothing' };
  const tail = Math.max(0, before.length - REACH);
  const below = findOverlap(before.slice(tail), lines).map(([b, l]) => [b + tail, l] as const);
  const last = below.at(-1);
  if (last && before.length - 1 - last[0] <= CUT) {
    const cut = before.length - 1 - last[0];
    const added = lines.slice(last[1] + 1);
    if (added.length > cut)
      return { lines: [...before.slice(0, last[0] + 1), ...added], added, where: 'after' };
  }
  const above = tail === 0 ? below : findOverlap(before.slice(0, REACH), lines);
  const first = above[0];
  if (first && first[0] <= CUT) {
    const added = lines.slice(0, first[1]);
    if (added.length > first[0])
      return { lines: [...added, ...before.slice(first[0])], added, where: 'before' };
  }
  if (last || first) return { lines: before, added: [], where: 'nothing' };
  return { lines: [...before, ...lines], added: lines, where: 'apart' };
}

/** Pairs of lines that are alike, in the order of both, as many letters as can be; none where that is too little to be sure. */
function findOverlap(
  one: readonly PictureLine[],
  other: readonly PictureLine[],
): (readonly [number, number])[] {
  const a = one.map(lettersOf);
  const b = other.map(lettersOf);
  const pairsOf = b.map(listPairs);
  const alike = a.map((letters) => {
    const pairs = listPairs(letters);
    return b.map((others, n) => (areAlike(letters, others, pairs, pairsOf[n]!) ? letters.length : 0));
  });
  const best = Array.from({ length: a.length + 1 }, () => new Array<number>(b.length + 1).fill(0));
  for (let i = a.length - 1; i >= 0; i--)
    for (let j = b.length - 1; j >= 0; j--) {
      const both = alike[i]![j]!;
      best[i]![j] = Math.max(best[i + 1]![j]!, best[i]![j + 1]!, both > 0 ? both + best[i + 1]![j + 1]! : 0);
    }
  if (best[0]![0]! < LEAST) return [];
  const pairs: (readonly [number, number])[] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    const both = alike[i]![j]!;
    if (both > 0 && best[i]![j] === both + best[i + 1]![j + 1]!) pairs.push([i++, j++]);
    else if (best[i + 1]![j]! >= best[i]![j + 1]!) i++;
    else j++;
  }
  return pairs;
}

function lettersOf({ words }: PictureLine): string {
  return words
    .map(({ text }) => text)
    .join('')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '');
}

function areAlike(
  one: string,
  other: string,
  pairs: ReadonlySet<string>,
  others: ReadonlySet<string>,
): boolean {
  if (one.length < FEW_LETTERS || other.length < FEW_LETTERS) return false;
  if (one === other) return true;
  if (Math.abs(one.length - other.length) > Math.max(one.length, other.length) * (1 - ALIKE)) return false;
  let common = 0;
  for (const pair of pairs) if (others.has(pair)) common++;
  return (2 * common) / (pairs.size + others.size) >= ALIKE;
}

function listPairs(letters: string): Set<string> {
  const pairs = new Set<string>();
  for (let n = 0; n + 2 <= letters.length; n++) pairs.add(letters.slice(n, n + 2));
  return pairs;
}
