import type { CellKind } from './column-kinds.ts';

export interface LaidCell {
  readonly text: string;
  readonly kind: CellKind;
  /** Index of the table row the cell is in. Cells of one row belong together. */
  readonly row?: number;
  /** The title of the cell's row or step without numbers. It may be a heading for the cell. */
  readonly about?: string;
  /** The number of cells after this one that are indented further in an outline. The cell may only name their content. */
  readonly heads?: number;
}

export interface LaidStep {
  readonly title: string;
  /** What the heading's line says after its number or name. It completes the title: "3" and "Short i" on "3. Short i". */
  readonly focus?: string;
  readonly cells: readonly LaidCell[];
}

/** The lines, columns and headings of a pasted text, before its items are read. */
export interface Layout {
  readonly title: string;
  readonly steps: readonly LaidStep[];
}

/** The most characters of a step's title that a line or a cell gives. A longer text is left to the items. */
export const LONGEST_TITLE = 80;
