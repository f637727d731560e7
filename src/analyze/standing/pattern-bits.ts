import { bitOf } from '../catalogue/names.ts';
import type { PatternId } from '../types.ts';

/** A set of patterns, one bit per catalogue row in catalogue order, 32 rows to the element. */
export type PatternBits = Uint32Array;

/** A set of the given patterns; ids the catalogue does not have are left out. */
export function bitsOf(ids: Iterable<PatternId>): PatternBits {
  const bits = new Uint32Array(Math.ceil(bitOf.size / 32));
  for (const id of ids) addBit(bits, id);
  return bits;
}

/** Whether the pattern is in the set. */
export function hasBit(bits: PatternBits, id: PatternId): boolean {
  const bit = bitOf.get(id);
  return bit !== undefined && hasRow(bits, bit);
}

/** The same for a pattern by its row in the catalogue. */
export function hasRow(bits: PatternBits, row: number): boolean {
  return (bits[row >>> 5]! & (1 << (row & 31))) !== 0;
}

/** Puts a pattern into the set. */
export function addBit(bits: PatternBits, id: PatternId): void {
  const bit = bitOf.get(id);
  if (bit !== undefined) bits[bit >>> 5]! |= 1 << (bit & 31);
}

/** Takes a pattern out of the set. */
export function removeBit(bits: PatternBits, id: PatternId): void {
  const bit = bitOf.get(id);
  if (bit !== undefined) bits[bit >>> 5]! &= ~(1 << (bit & 31));
}
