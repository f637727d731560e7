import { shownOfKey, splitKey } from '../../analyze/index.ts';
import type { Group, WordKey } from '../../analyze/types.ts';
import type { WordAction } from '../../contract/page-contract.ts';

/** What the teacher says a word is, beside what Wordreach makes of it. */
export type CountsAs = 'judged' | 'by-sight' | 'name' | 'skip';

/** What a group says of a word; `judged` where it says nothing. */
export function countedAs(group: Group, key: WordKey): CountsAs {
  const word = splitKey(key).word.toLowerCase();
  if (group.bySight.includes(word)) return 'by-sight';
  if (group.skip?.includes(word)) return 'skip';
  const name = nameOf(shownOfKey(key)).toLowerCase();
  return group.names.some((known) => known.toLowerCase() === name) ? 'name' : 'judged';
}

/** A group that says this alone of a word. */
export function countAs(group: Group, key: WordKey, as: CountsAs): Group {
  const word = splitKey(key).word.toLowerCase();
  const name = nameOf(shownOfKey(key)).toLowerCase();
  const cleared: Group = {
    ...group,
    bySight: group.bySight.filter((known) => known !== word),
    names: group.names.filter((known) => known.toLowerCase() !== name),
    ...(group.skip && { skip: group.skip.filter((known) => known !== word) }),
  };
  return as === 'judged' ? cleared : changeGroup(cleared, { do: as, word: key });
}

/** A group after what the teacher said of a word; the same group when it says so already. */
export function changeGroup(group: Group, action: WordAction): Group {
  if (action.do === 'teach') {
    return {
      ...group,
      alsoTaught: withItem(group.alsoTaught, action.pattern),
      notYet: group.notYet.filter((id) => id !== action.pattern),
    };
  }
  const { word } = splitKey(action.word);
  switch (action.do) {
    case 'by-sight':
      return { ...group, bySight: withItem(group.bySight, word.toLowerCase()) };
    case 'name':
      // A name keeps its capital, also where its place explains it: a biscuit is no name beside a cat called Biscuit.
      return {
        ...group,
        names: withItem(group.names, nameOf(shownOfKey(action.word))),
      };
    case 'skip':
      return { ...group, skip: withItem(group.skip ?? [], word.toLowerCase()) };
  }
}

function nameOf(shown: string): string {
  return shown.replace(/'s?$/, '');
}

function withItem(items: readonly string[], item: string): readonly string[] {
  return items.includes(item) ? items : [...items, item];
}
