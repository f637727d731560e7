import type { Judge } from '../analyze/index.ts';
import { isForeign } from '../variety/index.ts';
import type { Reach } from './types.ts';

/**
 * Returns a function that tells how well a group reads the words of swaps. Words that the group can read without help
 * count. A guess does not count. A word of the other variety of English (sidewalk, for a British group) does not count
 * either.
 */
export function reachFor(judge: Judge): (word: string) => Reach {
  return (word) => {
    if (isForeign(word, judge.group.accent)) return 'not';
    const { standing } = judge(word);
    if (standing === 'fresh') return 'fresh';
    return standing === 'reads' || standing === 'by-sight' ? 'reads' : 'not';
  };
}
