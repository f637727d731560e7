import type { Standing, Verdict } from '../analyze/types.ts';
import { say, type TextId } from '../wording/say.ts';

const SENTENCES = {
  reads: 'ui.isRead',
  fresh: 'ui.isFresh',
  'by-sight': 'ui.isBySight',
  name: 'ui.isName',
  unsure: 'ui.isUnsure',
  beyond: 'ui.isBeyond',
  skipped: 'ui.isSkipped',
} as const satisfies Record<Standing, TextId>;

/** The meaning of a word's standing for the group, in one sentence. */
export function standingSentence({ standing, why }: Pick<Verdict, 'standing' | 'why'>): string {
  return say(why === 'initialism' ? 'ui.isInitialism' : SENTENCES[standing]);
}
