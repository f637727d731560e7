import type { Standing } from '../analyze/types.ts';
import type { Reach } from './types.ts';

/** What a standing means for a swap: what the group can read without help counts, a guess does not. */
export function reachOf(standing: Standing): Reach {
  if (standing === 'fresh') return 'fresh';
  return standing === 'reads' || standing === 'by-sight' ? 'reads' : 'not';
}
