import { countBits } from './bit-counts.ts';

/** Gives the bits of an arithmetically coded stream; `slot` is the kind of bit asked for. */
export interface BitReader {
  bit(slot: number): number;
  /** A number below 128, its highest bit first; uses the 128 slots from `slot` on. */
  level(slot: number): number;
}

/**
 * Reads what data/guess/write-bits.ts wrote: a binary arithmetic coder over 32 bits. Beyond the end of the
 * bytes it reads zeros.
 */
export function createBitReader(bytes: Uint8Array, start: number, slots: number): BitReader {
  const counts = countBits(slots);
  let at = start;
  let low = 0;
  let high = 0xffffffff;
  let value = 0;
  for (let i = 0; i < 4; i++) value = ((value << 8) | (bytes[at++] ?? 0)) >>> 0;

  function bit(slot: number): number {
    const middle = (low + ((high - low) >>> 16) * counts.chance(slot)) >>> 0;
    const found = value <= middle ? 1 : 0;
    if (found === 1) high = middle;
    else low = (middle + 1) >>> 0;
    counts.learn(slot, found);
    while ((low ^ high) >>> 24 === 0) {
      low = (low << 8) >>> 0;
      high = ((high << 8) | 255) >>> 0;
      value = ((value << 8) | (bytes[at++] ?? 0)) >>> 0;
    }
    return found;
  }

  function level(slot: number): number {
    let node = 1;
    while (node < 128) node = node * 2 + bit(slot + node);
    return node - 128;
  }

  return { bit, level };
}
