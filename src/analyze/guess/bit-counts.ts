/** Estimates the probability of each kind of bit from the bits seen so far. Writer and reader keep the same estimates. */
export interface BitCounts {
  /** Probability of a set bit, as a fraction of 32768. */
  readonly chances: Uint16Array;
  /** How many bits of a kind were seen, up to {@link STEADY}. */
  readonly seen: Uint8Array;
}

/** After this many bits of a kind, the estimate moves at a constant pace. */
const STEADY = 250;
/**
 * The share of the distance by which the estimate moves, as a fraction of 65536. The first bits move the estimate most
 * of the way, and later bits move the estimate less and less.
 */
const PACE = Int32Array.from({ length: STEADY + 1 }, (_, seen) => Math.round(65536 / (seen + 1.6)));
/** Limits of the estimate: no bit is ever certain. */
const SUREST = 32_750;
const LEAST = 18;

/** Creates the counts, with even odds for every bit. */
export function countBits(slots: number): BitCounts {
  return { chances: new Uint16Array(slots).fill(16384), seen: new Uint8Array(slots) };
}

/**
 * Updates the estimate for one kind of bit. This is a separate function and not a method of the counts, so that it is
 * inlined in the loop that reads millions of bits.
 */
export function learnBit(chances: Uint16Array, seen: Uint8Array, slot: number, bit: number): void {
  const before = chances[slot]!;
  const pace = seen[slot]!;
  chances[slot] = before + ((((bit === 1 ? SUREST : LEAST) - before) * PACE[pace]!) >> 16);
  if (pace < STEADY) seen[slot] = pace + 1;
}
