import type { Swap } from '../../swap/types.ts';

/**
 * The lowest score of a sure swap, on the swapper's scale of 0 to 1. A less sure swap would explain a word with the
 * wrong word.
 */
const SURE = 0.4;

/**
 * Returns a first explanation of a story word in a few words: the surest swap that the group can read, else the surest
 * swap of all. Returns an empty text when there is no such swap. The teacher improves the explanation.
 */
export function glossOf(swaps: readonly Swap[]): string {
  const sure = swaps.filter(({ text, span, score }) => score >= SURE && text !== '' && !span);
  return (sure.find(({ reads }) => reads) ?? sure[0])?.text ?? '';
}
