import type { FineNeeds, PatternId } from '../types.ts';
import { hasBit, type PatternBits } from './pattern-bits.ts';

/** The required patterns, as counted for every group and as counted with finer rows. */
export interface Needs {
  readonly requires: readonly PatternId[];
  readonly fine?: FineNeeds | null;
}

/**
 * The finer rows of a group. Null for a group that knows no finer rows and is held to none, such as every group stored
 * before finer rows existed.
 */
export interface FineRows {
  /** Rows that count separately for this group. */
  readonly held: ReadonlySet<PatternId>;
}

interface Knowing {
  readonly taught: PatternBits;
  readonly fineRows: FineRows | null;
}

/**
 * Returns the patterns a group lacks. A taught finer row counts for the rows it replaces. If the group is held to a
 * finer row but was not taught it, that row is missing. For any other finer row, the rows it replaces count.
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

/** Returns the patterns that count for a group in a word it can read: the rows it was taught, including finer ones. */
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
