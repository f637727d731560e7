import { bitOf } from '../catalogue/names.ts';
import type { PatternId } from '../types.ts';

/** A set of patterns, with one bit for each catalogue row, in catalogue order. Each element holds 32 rows. */
export type PatternBits = Uint32Array;

/** Creates a set of the given patterns. Ids that are not in the catalogue are left out. */
export function bitsOf(ids: Iterable<PatternId>): PatternBits {
  const bits = new Uint32Array(Math.ceil(bitOf.size / 32));
  for (const id of ids) addBit(bits, id);
  return bits;
}

/** True if the pattern is in the set. */
export function hasBit(bits: PatternBits, id: PatternId): boolean {
  const bit = bitOf.get(id);
  return bit !== undefined && hasRow(bits, bit);
}

/** True if the pattern with this row in the catalogue is in the set. */
export function hasRow(bits: PatternBits, row: number): boolean {
  return (bits[row >>> 5]! & (1 << (row & 31))) !== 0;
}

/** Adds a pattern to the set. */
export function addBit(bits: PatternBits, id: PatternId): void {
  const bit = bitOf.get(id);
  if (bit !== undefined) bits[bit >>> 5]! |= 1 << (bit & 31);
}

/** Removes a pattern from the set. */
export function removeBit(bits: PatternBits, id: PatternId): void {
  const bit = bitOf.get(id);
  if (bit !== undefined) bits[bit >>> 5]! &= ~(1 << (bit & 31));
}
