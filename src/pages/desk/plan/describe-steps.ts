import type { RuleName, Step } from '../../../shorten/index.ts';
import { sayList } from '../../../ui/say-list.ts';
import { say } from '../../../wording/say.ts';

const PARTED: ReadonlySet<RuleName> = new Set<RuleName>([
  'semicolon',
  'and, but, so',
  'and with the same subject',
  'which and who',
  'although',
  'after',
  'because',
  'dash',
]);

/** Describes the changes of a sentence for the teacher: the removed words, and whether the sentence was split. */
export function describeSteps(steps: readonly Step[]): string {
  const words = steps
    .filter(({ rule }) => !PARTED.has(rule))
    .map(({ removed }) => say('desk.quoted', { words: removed.replace(/^[,\s]+|[,\s]+$/g, '') }));
  const isParted = steps.some(({ rule }) => PARTED.has(rule));
  if (words.length === 0) return say('desk.partsSentence');
  const without = say('desk.takesOut', { words: sayList(words) });
  return isParted ? `${without} ${say('desk.partsSentence')}` : without;
}
