import type { PdfLine } from './pdf-text.ts';

/** The fewest entries that make a list of contents, under its heading and without a heading. */
const ENTRIES = 2;
const ENTRIES_ALONE = 3;
/** The most rows that an entry may run over before its number. */
const LONGEST = 3;

const HEADING = /^(?:table of )?contents:?$/i;
/** Dots that lead to a number, in one run or separated by blanks. */
const LEADERS = /(?:[.·…_]\s?){4,}\s*(?:\d{1,4}|[ivxlc]{1,7})$/i;
const ENDS_IN_NUMBER = /\p{L}.*[\s.·…](?:\d{1,3}|[ivxlc]{1,7})$/iu;
const NUMBER = /^[\s.·…_]*(?:\d{1,4}|[ivxlc]{1,7})$/i;

/** Lines that are side by side, from left to right. */
type Row = readonly PdfLine[];

/**
 * Removes lists of contents. Under a heading for contents, the rows that end in a page number are removed, also on the
 * pages that follow. Rows of dots that lead to a page number are removed anywhere.
 */
export function dropContents(pages: readonly (readonly PdfLine[])[]): PdfLine[][] {
  let runsOn = false;
  return pages.map((lines) => {
    const rows = findRows(lines);
    const gone = new Set<PdfLine>();
    const led = rows.filter((row) => LEADERS.test(rowText(row)));
    if (led.length >= ENTRIES_ALONE || runsOn) for (const row of led) for (const line of row) gone.add(line);
    const heading = rows.findIndex((row) => HEADING.test(rowText(row)));
    if (heading === -1 && !runsOn) return lines.filter((line) => !gone.has(line));
    const first = heading === -1 ? 0 : heading + 1;
    const end = endOfEntries(rows, first);
    const entries = rows.slice(first, end).filter(isEntry).length;
    if (entries >= ENTRIES)
      for (const row of rows.slice(heading === -1 ? 0 : heading, end)) for (const line of row) gone.add(line);
    // The page's own number may come below the last entry.
    runsOn = entries >= ENTRIES && end >= rows.length - 1;
    return lines.filter((line) => !gone.has(line));
  });
}

/** Returns the index of the row after the last entry of a list. */
function endOfEntries(rows: readonly Row[], first: number): number {
  let end = first;
  for (let n = first; n < rows.length && n < end + LONGEST; n++) if (isEntry(rows[n]!)) end = n + 1;
  return end;
}

function isEntry(row: Row): boolean {
  const text = rowText(row);
  return LEADERS.test(text) || ENDS_IN_NUMBER.test(text) || (row.length > 1 && NUMBER.test(row.at(-1)!.text));
}

function rowText(row: Row): string {
  return row.map(({ text }) => text).join(' ');
}

function findRows(lines: readonly PdfLine[]): Row[] {
  const rows: PdfLine[][] = [];
  for (const line of [...lines].sort((one, other) => other.y - one.y)) {
    const row = rows.at(-1);
    if (row && Math.abs(row[0]!.y - line.y) < line.size / 2) row.push(line);
    else rows.push([line]);
  }
  return rows.map((row) => row.sort((one, other) => one.x - other.x));
}
