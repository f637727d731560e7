import { shownOfKey, splitKey } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import type { WordAction } from '../../contract/page-contract.ts';

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
