import { countBits } from './bit-counts.ts';

/** Gives the bits of an arithmetically coded stream; `slot` is the kind of bit asked for. */
export interface BitReader {
  bit(slot: number): number;
  /** A number below 128, its highest bit first; uses the 128 slots from `slot` on. */
  level(slot: number): number;
}

const LOW = 0;
const HIGH = 1;
const VALUE = 2;

/**
 * Reads what data/guess/write-bits.ts wrote: a binary arithmetic coder over 32 bits. Beyond the end of the
 * bytes it reads zeros.
 */
export function createBitReader(bytes: Uint8Array, start: number, slots: number): BitReader {
  const { chances, learn } = countBits(slots);
  // An array, because a plain variable above 2^31 is a new object at each change.
  const at = Uint32Array.of(0, 0xffffffff, 0);
  let next = start;
  for (let i = 0; i < 4; i++) at[VALUE] = (at[VALUE]! << 8) | (bytes[next++] ?? 0);

  function bit(slot: number): number {
    let low = at[LOW]!;
    let high = at[HIGH]!;
    const middle = (low + Math.imul((high - low) >>> 15, chances[slot]!)) >>> 0;
    const found = at[VALUE]! <= middle ? 1 : 0;
    if (found === 1) high = middle;
    else low = middle + 1;
    learn(slot, found);
    while ((low ^ high) >>> 24 === 0) {
      low = (low << 8) >>> 0;
      high = ((high << 8) | 255) >>> 0;
      at[VALUE] = (at[VALUE]! << 8) | (next < bytes.length ? bytes[next]! : 0);
      next++;
    }
    at[LOW] = low;
    at[HIGH] = high;
    return found;
  }

  function level(slot: number): number {
    let node = 1;
    while (node < 128) node = node * 2 + bit(slot + node);
    return node - 128;
  }

  return { bit, level };
}
