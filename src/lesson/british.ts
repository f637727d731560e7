import data from './british.json' with { type: 'json' };
import type { LessonInput } from './lesson-input.ts';

const setOf = (list: string): ReadonlySet<string> => new Set(list.split(' '));
const american = setOf(data.american);
const british = setOf(data.british);
const broadA = setOf(data.broadA);
/** Starter sequences of British schools. */
const BRITISH: ReadonlySet<string> = new Set(['england-2013']);

function isBritish({ sequence }: Pick<LessonInput, 'sequence'>): boolean {
  return sequence !== null && BRITISH.has(sequence.id);
}

/** Whether a word is spelt or used as on the other side of the sea: gray for a group in England, grey for any other. */
export function isForeign(word: string, input: Pick<LessonInput, 'sequence'>): boolean {
  return (isBritish(input) ? american : british).has(word);
}

/** Whether many teachers of the group say the a of a word as in father: for a group in England that of raft, not of map. */
export function hasBroadA(word: string, input: Pick<LessonInput, 'sequence'>): boolean {
  return isBritish(input) && broadA.has(word);
}
