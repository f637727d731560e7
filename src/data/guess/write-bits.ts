import { countBits, learnBit } from '../../analyze/guess/bit-counts.ts';

/** Encodes bits for analyze/guess/read-bits.ts. */
export interface BitWriter {
  bit(slot: number, bit: number): void;
  level(slot: number, level: number): void;
  end(): number[];
}

/** Creates a binary arithmetic coder over 32 bits. The more predictable a bit is, the less space it takes. */
export function createBitWriter(slots: number): BitWriter {
  const { chances, seen } = countBits(slots);
  const bytes: number[] = [];
  let low = 0;
  let high = 0xffffffff;

  function bit(slot: number, set: number): void {
    const middle = (low + ((high - low) >>> 15) * chances[slot]!) >>> 0;
    if (set === 1) high = middle;
    else low = (middle + 1) >>> 0;
    learnBit(chances, seen, slot, set);
    while ((low ^ high) >>> 24 === 0) {
      bytes.push(high >>> 24);
      low = (low << 8) >>> 0;
      high = ((high << 8) | 255) >>> 0;
    }
  }

  function level(slot: number, value: number): void {
    let node = 1;
    for (let shift = 6; shift >= 0; shift--) {
      const set = (value >> shift) & 1;
      bit(slot + node, set);
      node = node * 2 + set;
    }
  }

  return {
    bit,
    level,
    end: () => [...bytes, low >>> 24, 255, 255, 255],
  };
}
