import { shownOfKey, splitKey } from '../../analyze/index.ts';
import type { CountsAs, Group, WordKey } from '../../analyze/types.ts';
import type { WordAction } from '../../contract/page-contract.ts';

/** Returns how a word counts for a group; `judged` if the group has no setting for the word. */
export function countedAs(group: Group, key: WordKey): CountsAs {
  const word = splitKey(key).word.toLowerCase();
  if (group.bySight.includes(word)) return 'by-sight';
  if (group.skip?.includes(word)) return 'skip';
  const name = nameOf(shownOfKey(key)).toLowerCase();
  return group.names.some((known) => known.toLowerCase() === name) ? 'name' : 'judged';
}

/** Returns the group with the word counted in this way only. */
export function countAs(group: Group, key: WordKey, as: CountsAs): Group {
  const word = splitKey(key).word.toLowerCase();
  const name = nameOf(shownOfKey(key)).toLowerCase();
  const cleared: Group = {
    ...group,
    bySight: group.bySight.filter((known) => known !== word),
    names: group.names.filter((known) => known.toLowerCase() !== name),
    ...(group.skip && { skip: group.skip.filter((known) => known !== word) }),
  };
  switch (as) {
    case 'judged':
      return cleared;
    case 'by-sight':
      return { ...cleared, bySight: [...cleared.bySight, word] };
    case 'name':
      // A name keeps its capital, even where its position explains the capital. The lower-case word is not the name: a
      // biscuit is no name beside a cat called Biscuit.
      return { ...cleared, names: [...cleared.names, nameOf(shownOfKey(key))] };
    case 'skip':
      return { ...cleared, skip: [...(cleared.skip ?? []), word] };
  }
}

/** Returns the group after the teacher's action on a word or a pattern. */
export function changeGroup(group: Group, action: WordAction): Group {
  switch (action.do) {
    case 'teach':
      return {
        ...group,
        alsoTaught: withItem(group.alsoTaught, action.pattern),
        notYet: group.notYet.filter((id) => id !== action.pattern),
      };
    case 'unteach':
      return {
        ...group,
        alsoTaught: group.alsoTaught.filter((id) => id !== action.pattern),
        notYet: action.notYet ? withItem(group.notYet, action.pattern) : group.notYet,
      };
    default:
      return countAs(group, action.word, action.do);
  }
}

function nameOf(shown: string): string {
  return shown.replace(/'s?$/, '');
}

function withItem(items: readonly string[], item: string): readonly string[] {
  return items.includes(item) ? items : [...items, item];
}
