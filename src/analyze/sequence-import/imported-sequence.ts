import type { PatternId } from '../types.ts';
import type { CellKind } from './column-kinds.ts';

/**
 * How far an item was understood. `matched`: says itself what it is; `guessed`: the usual meaning of something
 * with several (ow alone); `unknown`: the teacher has to say; `chosen`: the teacher has said; `ignored`: left
 * out on purpose (notes, column heads, review weeks, or the teacher's word).
 */
export type ItemStatus = 'matched' | 'guessed' | 'unknown' | 'chosen' | 'ignored';

/** One piece of a pasted sequence. */
export interface ImportedItem {
  /** As it was pasted, apart from the marks that separate it from its neighbours. */
  text: string;
  status: ItemStatus;
  patterns: PatternId[];
  bySight: string[];
}

export interface ImportedStep {
  /** Empty when the text names none. */
  title: string;
  items: ImportedItem[];
}

/** A pasted scope and sequence, with nothing left out of it. */
export interface ImportedSequence {
  /** Empty when the text has no heading of its own. */
  title: string;
  steps: ImportedStep[];
}

/** What a teacher settled about an item: its patterns, its words taught by sight, or nothing to teach. */
export type ItemChoice = readonly PatternId[] | 'by-sight' | 'ignore';

/** A pasted table as far as the teacher has to see it to say what its columns hold. */
export interface PastedTable {
  /** `name` as its head calls it, empty without one; `kind` what it is taken for. */
  readonly columns: readonly { readonly name: string; readonly kind: CellKind }[];
  /** The first rows, without that of the names; each as long as there are columns. */
  readonly rows: readonly (readonly string[])[];
}
