/** How likely each kind of bit is, learnt from those seen so far; writer and reader keep the same. */
export interface BitCounts {
  /** Probability of a set bit, of 32768. */
  readonly chances: Uint16Array;
  learn(slot: number, bit: number): void;
}

/** After so many bits of a kind the estimate moves at a constant pace. */
const STEADY = 250;
/** How far the estimate moves, of 65536: at first to the bit seen, later by less and less. */
const PACE = Int32Array.from({ length: STEADY + 1 }, (_, seen) => Math.round(65536 / (seen + 1.6)));
/** No bit is ever certain. */
const SUREST = 32_750;
const LEAST = 18;

/** Starts with every bit even. */
export function countBits(slots: number): BitCounts {
  const chances = new Uint16Array(slots).fill(16384);
  const seen = new Uint8Array(slots);
  return {
    chances,
    learn(slot, bit) {
      const before = chances[slot]!;
      const pace = seen[slot]!;
      chances[slot] = before + ((((bit === 1 ? SUREST : LEAST) - before) * PACE[pace]!) >> 16);
      if (pace < STEADY) seen[slot] = pace + 1;
    },
  };
}
