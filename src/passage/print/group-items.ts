import type { SheetLine } from './make-sheet.ts';

/** Lines in their order, with entries that follow each other as one list. */
export function groupItems<Line extends Pick<SheetLine, 'kind'>>(lines: readonly Line[]): (Line | Line[])[] {
  const grouped: (Line | Line[])[] = [];
  for (const line of lines) {
    const last = grouped.at(-1);
    if (line.kind !== 'item') grouped.push(line);
    else if (Array.isArray(last)) last.push(line);
    else grouped.push([line]);
  }
  return grouped;
}
