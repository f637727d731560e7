import type { SheetLine } from './make-sheet.ts';

/** Groups list items that follow each other into one list. The lines keep their order. */
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
