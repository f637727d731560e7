import type { FineNeeds, PatternId } from '../types.ts';
import { hasBit, type PatternBits } from './pattern-bits.ts';

/** The required patterns, as every group counts them and by finer rows. */
export interface Needs {
  readonly requires: readonly PatternId[];
  readonly fine?: FineNeeds | null;
}

/** The finer rows that a group knows; null for a group that knows and is held to none, such as all that were stored before there were any. */
export interface FineRows {
  /** Rows that count by themselves for this group. */
  readonly held: ReadonlySet<PatternId>;
}

interface Knowing {
  readonly taught: PatternBits;
  readonly fineRows: FineRows | null;
}

/**
 * The patterns a group lacks. A finer row that it was taught counts for the rows in its place; one it is held to and was not
 * taught is missing itself; of any other the rows in its place count.
 */
export function missingOf({ requires, fine }: Needs, { taught, fineRows }: Knowing): PatternId[] {
  if (!fine || !fineRows) return requires.filter((id) => !hasBit(taught, id));
  const missing = new Set(fine.rest.filter((id) => !hasBit(taught, id)));
  for (const { row, of } of fine.finer) {
    if (hasBit(taught, row)) continue;
    for (const id of fineRows.held.has(row) ? [row] : of) if (!hasBit(taught, id)) missing.add(id);
  }
  return [...missing].sort();
}

/** The patterns that count for a group in a word it can read: the rows it was taught, finer ones too. */
export function neededOf({ requires, fine }: Needs, { taught, fineRows }: Knowing): readonly PatternId[] {
  if (!fine || !fineRows) return requires;
  const needed = new Set(fine.rest);
  for (const { row, of } of fine.finer) {
    if (fineRows.held.has(row)) needed.add(row);
    else {
      const knowsRow = hasBit(taught, row);
      if (knowsRow) needed.add(row);
      for (const id of of) if (!knowsRow || hasBit(taught, id)) needed.add(id);
    }
  }
  return [...needed].sort();
}
