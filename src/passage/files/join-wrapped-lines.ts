/**
 * The widths between which a text counts as wrapped by hand, in letters. A narrower text is verse or a list. A wider
 * text is not wrapped by hand.
 */
const NARROWEST = 45;
const WIDEST = 100;
/** At least this share of the line ends of a wrapped paragraph are there because the next word had no room. */
const MOST = 0.8;

/**
 * Returns one line for each paragraph of a plain text. Lines between two blank lines are joined if they are wrapped,
 * that is, if the first word of the next line would not have fitted on the line before. So a letter wrapped at 72
 * columns is joined. Verse, an address or a list of short lines is not joined, because its line ends are meant.
 */
export function joinWrappedLines(text: string): string[] {
  const blocks = text
    .replace(/\r\n?|\u2028|\u2029|\f/g, '\n')
    .replace(/\u00ad|\ufeff/g, '')
    .split(/\n[^\S\n]*\n/)
    .map((block) => block.split('\n').filter((line) => line.trim() !== ''));
  const width = blocks
    .filter((lines) => lines.length > 1)
    .flatMap((lines) => lines.map(lengthOf).filter((n) => n <= WIDEST))
    // `reduce` is used because a long book has more lines than a call takes arguments.
    .reduce((widest, n) => Math.max(widest, n), 0);
  return blocks.flatMap((lines) => joinBlock(lines, width)).map((line) => line.replace(/\s+/g, ' ').trim());
}

function joinBlock(lines: readonly string[], width: number): readonly string[] {
  const ends = lines.slice(0, -1).map((line, n) => hadNoRoom(line, lines[n + 1]!, width));
  const begins = lines.slice(1).map(beginsAnew);
  const closes = lines.map((line, n) => !ends[n] && /[.!?:]["'”’)]*\s*$/.test(line));
  const counted = ends.filter((_, n) => !begins[n] && !closes[n]);
  const isWrapped =
    width >= NARROWEST &&
    lines.every((line) => lengthOf(line) <= WIDEST) &&
    counted.filter(Boolean).length >= counted.length * MOST;
  if (!isWrapped) return lines;
  const joined: string[] = [];
  lines.forEach((line, n) => {
    const isNew = n === 0 || begins[n - 1] || closes[n - 1] || isHeading(lines[n - 1]!);
    if (isNew) joined.push(line);
    else joined.push(`${joined.pop()} ${line.trim()}`);
  });
  return joined;
}

/**
 * Tells whether the first word of the next line had no room on this line. Example: “harbour” has no room after “of the”
 * at column 72.
 */
function hadNoRoom(line: string, next: string, width: number): boolean {
  const word = /^\s*(\S+)/.exec(next)?.[1] ?? '';
  return lengthOf(line) + 1 + word.length > width;
}

/** Tells whether a line is a list entry, a heading or an indented first line. */
function beginsAnew(line: string): boolean {
  return /^(\s{2,}|\t)|^\s*([-•*–]|\d{1,3}[.)])\s+\S/.test(line) || isHeading(line);
}

function isHeading(line: string): boolean {
  return /^#{1,6} /.test(line);
}

function lengthOf(line: string): number {
  return line.trimEnd().length;
}
