import type { CountsAs, PatternId, WordKey } from '../../analyze/types.ts';
import { changeGroup, countAs, countedAs } from './change-group.ts';
import { changeGroupById } from './groups-store.ts';

/** Undoes a change; later changes stay. */
export type TakeBack = () => Promise<void>;

/** Makes a group count a word as the teacher says. Rejects with `StorageFault`. */
export async function setCountsAs(id: string, word: WordKey, as: CountsAs): Promise<TakeBack> {
  let before: CountsAs = 'judged';
  await changeGroupById(id, (group) => {
    before = countedAs(group, word);
    return countAs(group, word, as);
  });
  return () => changeGroupById(id, (group) => countAs(group, word, before));
}

/**
 * The patterns that were not secure when this page marked them as taught. Each entry is the id of the group and the
 * pattern.
 */
const notSecure = new Set<string>();

/** Marks a pattern as secure and as taught before its step, or restores its earlier state. Rejects with `StorageFault`. */
export async function setTaught(id: string, pattern: PatternId, isTaught: boolean): Promise<TakeBack> {
  const key = `${id} ${pattern}`;
  await changeGroupById(id, (group) => {
    if (!isTaught) return changeGroup(group, { do: 'unteach', pattern, notYet: notSecure.has(key) });
    if (group.notYet.includes(pattern)) notSecure.add(key);
    return changeGroup(group, { do: 'teach', pattern });
  });
  return async () => void (await setTaught(id, pattern, !isTaught));
}
