import type { Piece } from './cut-words.ts';
import { nearness, type SwapTable } from './open-swaps.ts';

/**
 * The rank below which words are ignored. Function words and other very common words show little about the topic of a
 * sentence.
 */
const TOO_COMMON = 150;
/** The distance at which a word counts half as much. More distant words count less. */
const HALF_AT = 6;

/**
 * Returns the topic of the sentence around the word at `at`: the sum of the vectors of its words. Rare words and near
 * words count more.
 */
export function contextVector(pieces: readonly Piece[], at: number, table: SwapTable): Float32Array | null {
  let sum: Float32Array | null = null;
  pieces.forEach(({ lower }, i) => {
    if (i === at) return;
    const rank = table.rank(lower);
    if (rank < TOO_COMMON) return;
    const vector = table.vector(lower);
    if (vector === null) return;
    sum ??= new Float32Array(vector.length);
    const weight = Math.log2(rank / 100) / (1 + Math.abs(i - at) / HALF_AT);
    for (let n = 0; n < vector.length; n++) sum[n]! += weight * vector[n]!;
  });
  if (sum === null) return null;
  const length = Math.sqrt(nearness(sum, sum)) || 1;
  return (sum as Float32Array).map((value) => value / length);
}
