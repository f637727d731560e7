import type { PictureLine } from './picture-reading.ts';

/** A line of a text that was read from several pictures, one after the other. */
export interface ScreenLine extends PictureLine {
  /** The index of the line's picture, from 0. */
  readonly screen: number;
}

/** Several screens joined to one text. */
export interface JoinedScreens {
  readonly lines: readonly ScreenLine[];
  /** The new lines of the last screen. `where` tells whether they come after or before the earlier lines. */
  readonly added: readonly ScreenLine[];
  /** `apart`: the screen has no line in common with the earlier lines, so it is added at the end. */
  readonly where: 'after' | 'before' | 'nothing' | 'apart';
}

/** How many lines at the edge of a screen may be cut through and read wrongly. */
const CUT = 2;
/** The fewest letters of a line that is compared. Shorter lines may be alike by chance. */
const FEW_LETTERS = 12;
/** The fewest matching letters for two screens to overlap. */
const LEAST = 20;
/** The least similarity of two lines that count as one line read twice. */
const ALIKE = 0.75;
/** How many lines at either end of the text are searched for an overlap. */
const REACH = 300;

/**
 * Joins a new screen of a long document to the lines read before, using the lines that both have in common. New lines
 * go below when the teacher scrolled down, and above when the teacher scrolled up. Lines at the edge of a screen may be
 * cut through, so they are taken from the other screen.
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

/**
 * Returns the pairs of similar lines that keep the order of both lists and match the most letters. Returns no pairs
 * when too few letters match.
 */
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
