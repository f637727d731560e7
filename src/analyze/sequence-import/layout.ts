import type { CellKind } from './column-kinds.ts';

export interface LaidCell {
  readonly text: string;
  readonly kind: CellKind;
  /** Which row of a table it is in; what stands in one row goes together. */
  readonly row?: number;
  /** What the title of its row or step says besides numbers: it may be a heading of what it holds. */
  readonly about?: string;
  /** How many cells after it are further in, in an outline: it may only name what they hold. */
  readonly heads?: number;
}

export interface LaidStep {
  readonly title: string;
  readonly cells: readonly LaidCell[];
}

/** What a pasted text's lines, columns and headings say, before its items are read. */
export interface Layout {
  readonly title: string;
  readonly steps: readonly LaidStep[];
}
