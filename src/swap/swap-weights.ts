/**
 * The weights of the evidence for swaps. They were set on `tests/words/swap-tune.tsv`, with our own list and without it
 * (`tests/accuracy/measure-swaps.ts --tune --ablate`).
 */
export const swapWeights = {
  /** The nearness of the sentence to the cues of the swap's sense, if our own list has cues. */
  sense: 4,
  /** The nearness of the sentence to the swap itself. */
  context: 3,
  /** The log of the likelihood of the part of speech. */
  part: 0.7,
  /** The score below which a swap is not shown. */
  shown: 0.05,
  /** The amount that is added to the score of a sure swap when the swaps are ordered. */
  sure: 1,
  /** The least likelihood of the part of speech for which a sure swap counts as sure. */
  settled: 0.75,
};
