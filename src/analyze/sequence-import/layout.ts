import type { CellKind } from './column-kinds.ts';

export interface LaidCell {
  readonly text: string;
  readonly kind: CellKind;
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
