/** How likely each kind of bit is, learnt from those seen so far; writer and reader keep the same. */
export interface BitCounts {
  /** Probability of a set bit, of 65536. */
  chance(slot: number): number;
  learn(slot: number, bit: number): void;
}

/** After so many bits of a kind the estimate moves at a constant pace. */
const STEADY = 250;
const PACE = Float64Array.from({ length: STEADY + 1 }, (_, seen) => 1 / (seen + 1.6));

/** No bit is ever certain. */
const SUREST = 65_500;
const LEAST = 36;

/** Starts with every bit even. */
export function countBits(slots: number): BitCounts {
  const chances = new Uint16Array(slots).fill(32768);
  const seen = new Uint8Array(slots);
  return {
    chance: (slot) => chances[slot]!,
    learn(slot, bit) {
      const before = chances[slot]!;
      const pace = seen[slot]!;
      chances[slot] = before + Math.trunc(((bit === 1 ? SUREST : LEAST) - before) * PACE[pace]!);
      if (pace < STEADY) seen[slot] = pace + 1;
    },
  };
}
