import type { Judge } from '../analyze/index.ts';
import { isForeign } from '../variety/index.ts';
import type { Reach } from './types.ts';

/**
 * How well a group reads the words of swaps: words it can read without help count; a guess does not, nor does a word of the other English
 * (sidewalk, for a British group).
 */
export function reachFor(judge: Judge): (word: string) => Reach {
  return (word) => {
    if (isForeign(word, judge.group.accent)) return 'not';
    const { standing } = judge(word);
    if (standing === 'fresh') return 'fresh';
    return standing === 'reads' || standing === 'by-sight' ? 'reads' : 'not';
  };
}
