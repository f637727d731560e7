/** How much each thing counts; set on `tests/words/swap-tune.tsv`, with our own list and
 * without it (`tests/accuracy/measure-swaps.ts --tune --ablate`). */
export const swapWeights = {
  /** Nearness of the sentence to the cues of the swap's sense, where our own list gives some. */
  sense: 4,
  /** Nearness of the sentence to the swap itself. */
  context: 3,
  /** Log of how likely the part of speech is. */
  part: 0.7,
  /** Below this a swap is not shown at all. */
  shown: 0.05,
  /** The gain of a sure swap in the order. */
  sure: 1,
  /** As likely the part of speech has to be for a sure swap to count as one. */
  settled: 0.75,
};
