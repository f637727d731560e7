import type { PdfLine } from './pdf-text.ts';

/** Lines of a page that is drawn row by row, in the order they are read: each column from top to bottom, between what stands across them. */
export function readByColumns(lines: readonly PdfLine[], gutters: readonly number[]): PdfLine[] {
  if (gutters.length === 0) return [...lines];
  const read: PdfLine[] = [];
  const columns: PdfLine[][] = Array.from({ length: gutters.length + 1 }, () => []);
  const end = (): void => {
    for (const column of columns) read.push(...column.splice(0));
  };
  for (const line of lines) {
    const column = gutters.filter((gutter) => gutter <= line.x).length;
    const isAcross = column < gutters.length && line.right > gutters[column]!;
    if (isAcross) end();
    columns[column]!.push(line);
    if (isAcross) end();
  }
  end();
  return read;
}
