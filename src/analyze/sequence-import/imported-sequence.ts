import type { PatternId } from '../types.ts';
import type { CellKind } from './column-kinds.ts';

/**
 * The degree to which an item was understood.
 * - `matched`: the item says itself what it is.
 * - `guessed`: the usual meaning of an item with several (ow alone).
 * - `unknown`: the teacher has to decide.
 * - `chosen`: the teacher has decided.
 * - `ignored`: left out on purpose (notes, column heads, review weeks, or the teacher's decision).
 */
export type ItemStatus = 'matched' | 'guessed' | 'unknown' | 'chosen' | 'ignored';

/** One piece of a pasted sequence. */
export interface ImportedItem {
  /** The pasted text without the marks that separate it from its neighbours. */
  text: string;
  status: ItemStatus;
  patterns: PatternId[];
  bySight: string[];
}

export interface ImportedStep {
  /** The title of the step. It is empty if the text gives none. */
  title: string;
  items: ImportedItem[];
}

/** A pasted scope and sequence with its whole content. */
export interface ImportedSequence {
  /** The title of the sequence. It is empty if the text has no heading of its own. */
  title: string;
  steps: ImportedStep[];
}

/** The teacher's decision about an item: its patterns, its words taught by sight, or nothing to teach. */
export type ItemChoice = readonly PatternId[] | 'by-sight' | 'ignore';

/** The part of a pasted table that the teacher has to see in order to say what its columns contain. */
export interface PastedTable {
  /** `name` is the column's name in the head, empty if there is no head. `kind` is the kind the column is taken for. */
  readonly columns: readonly { readonly name: string; readonly kind: CellKind }[];
  /** The first rows without the row of names. Each row has a cell for every column. */
  readonly rows: readonly (readonly string[])[];
}
