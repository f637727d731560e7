import { countBits, learnBit } from './bit-counts.ts';

/** Reads the bits of an arithmetically coded stream. `slot` is the kind of bit to read. */
export interface BitReader {
  bit(slot: number): number;
  /** Reads a number below 128, the highest bit first. The 128 slots from `slot` on are used. */
  level(slot: number): number;
}

const LOW = 0;
const HIGH = 1;
const VALUE = 2;

/**
 * Reads the output of data/guess/write-bits.ts: a binary arithmetic coder over 32 bits. Past the end of the bytes, the
 * reader gets zeros.
 */
export function createBitReader(bytes: Uint8Array, start: number, slots: number): BitReader {
  const { chances, seen } = countBits(slots);
  // The state is an array, because each change to a plain variable above 2^31 makes a new object.
  const at = Uint32Array.of(0, 0xffffffff, 0);
  let next = start;
  for (let i = 0; i < 4; i++) at[VALUE] = (at[VALUE]! << 8) | (bytes[next++] ?? 0);

  /** Reads one bit. Millions of bits are read one after the other, so the common path is short: most bits need no shift. */
  function bit(slot: number): number {
    const low = at[LOW]!;
    const high = at[HIGH]!;
    const middle = (low + Math.imul((high - low) >>> 15, chances[slot]!)) >>> 0;
    const found = at[VALUE]! <= middle ? 1 : 0;
    learnBit(chances, seen, slot, found);
    const from = found === 1 ? low : middle + 1;
    const to = found === 1 ? middle : high;
    at[LOW] = from;
    at[HIGH] = to;
    if ((from ^ to) >>> 24 === 0) shift();
    return found;
  }

  function shift(): void {
    do {
      at[LOW] = at[LOW]! << 8;
      at[HIGH] = (at[HIGH]! << 8) | 255;
      at[VALUE] = (at[VALUE]! << 8) | (next < bytes.length ? bytes[next]! : 0);
      next++;
    } while ((at[LOW]! ^ at[HIGH]!) >>> 24 === 0);
  }

  /**
   * Reads a number of seven bits with the same steps as `bit`. The state is kept in local variables meanwhile, which
   * saves a fifth of the time of a model.
   */
  function level(slot: number): number {
    let low = at[LOW]!;
    let high = at[HIGH]!;
    let node = 1;
    while (node < 128) {
      const middle = (low + Math.imul((high - low) >>> 15, chances[slot + node]!)) >>> 0;
      const found = at[VALUE]! <= middle ? 1 : 0;
      learnBit(chances, seen, slot + node, found);
      if (found === 1) high = middle;
      else low = (middle + 1) >>> 0;
      node = node * 2 + found;
      if ((low ^ high) >>> 24 !== 0) continue;
      at[LOW] = low;
      at[HIGH] = high;
      shift();
      low = at[LOW]!;
      high = at[HIGH]!;
    }
    at[LOW] = low;
    at[HIGH] = high;
    return node - 128;
  }

  return { bit, level };
}
