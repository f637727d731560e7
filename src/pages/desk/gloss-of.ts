import type { Swap } from '../../swap/types.ts';

/** Less sure swaps would explain one word by the wrong other, on the swapper's scale of 0 to 1. */
const SURE = 0.4;

/**
 * A few words that say what a story word means, to begin with: the surest swap the group can read, else the surest at all;
 * empty when there is none. The teacher makes it better.
 */
export function glossOf(swaps: readonly Swap[]): string {
  const sure = swaps.filter(({ text, span, score }) => score >= SURE && text !== '' && !span);
  return (sure.find(({ reads }) => reads) ?? sure[0])?.text ?? '';
}
