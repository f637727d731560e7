import type { CountsAs, PatternId, WordKey } from '../../analyze/types.ts';
import { changeGroup, countAs, countedAs } from './change-group.ts';
import { changeGroupById } from './groups-store.ts';

/** Takes a change back; what was changed since stays. */
export type TakeBack = () => Promise<void>;

/** Has a group count a word as the teacher says. Rejects with `StorageFault`. */
export async function setCountsAs(id: string, word: WordKey, as: CountsAs): Promise<TakeBack> {
  let before: CountsAs = 'judged';
  await changeGroupById(id, (group) => {
    before = countedAs(group, word);
    return countAs(group, word, as);
  });
  return () => changeGroupById(id, (group) => countAs(group, word, before));
}

/** Marks a pattern as taught before its step, and as secure. Rejects with `StorageFault`. */
export async function markAsTaught(id: string, pattern: PatternId): Promise<TakeBack> {
  let notYet = false;
  await changeGroupById(id, (group) => {
    notYet = group.notYet.includes(pattern);
    return changeGroup(group, { do: 'teach', pattern });
  });
  return () => changeGroupById(id, (group) => changeGroup(group, { do: 'unteach', pattern, notYet }));
}
