import { speechOf } from '../analyze/index.ts';
import data from './broad-a.json' with { type: 'json' };
import type { LessonInput } from './lesson-input.ts';

const broad: ReadonlySet<string> = new Set(data.words.split(' '));

/** Whether a group says the a of a word as in father: in the south of Britain that of raft, not of map. */
export function hasBroadA(word: string, { group }: Pick<LessonInput, 'group'>): boolean {
  return speechOf(group).bath === 'father' && broad.has(word);
}
