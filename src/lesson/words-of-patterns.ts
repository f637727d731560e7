import type { PatternId } from '../analyze/types.ts';
import { fitWords, oneOfFamily } from './fit-words.ts';
import type { LessonInput } from './lesson-input.ts';
import { rowOf, wordsWith } from './new-pattern/choose-words.ts';
import type { Picker } from './picker.ts';
import { type ListedWord, listWords } from './word-lists/listed-words.ts';

/** With fewer plain words (rain), others that need the pattern (daybreak) come after them. */
const ENOUGH_PLAIN = 12;

/** The words that show a pattern, plain ones where there are some; of contractions the short forms, which are no list words else. */
export function wordsOfPattern(input: LessonInput, id: PatternId): ListedWord[] {
  if (/^(?:contraction|possessive)/.test(id))
    return listWords(input).filter(({ requires }) => requires.includes(id));
  const row = rowOf(id);
  const plain = row ? wordsWith(input, row) : [];
  if (plain.length >= ENOUGH_PLAIN) return plain;
  return oneOfFamily([...plain, ...fitWords(input).filter(({ requires }) => requires.includes(id))]);
}

/**
 * Words of some patterns in turn, so that each pattern that has words takes part and none has many more than another: of -ed
 * `jumped`, `sailed`, `landed`. `isFirst` words come before others of their pattern,
 * and only `isFit` ones are taken.
 */
export function takeInTurn(
  input: LessonInput,
  patterns: readonly PatternId[],
  count: number,
  picker: Picker,
  {
    isFirst = () => false,
    isFit = () => true,
    wordsOf = (id) => wordsOfPattern(input, id),
  }: {
    isFirst?: (word: ListedWord) => boolean;
    isFit?: (word: ListedWord) => boolean;
    wordsOf?: (id: PatternId) => readonly ListedWord[];
  } = {},
): ListedWord[] {
  const lists = patterns
    .map((id) => {
      const words = wordsOf(id).filter(isFit);
      const first = words.filter(isFirst);
      const others = words.filter((word) => !first.includes(word));
      return [...first, ...picker.pickEarly(others, count)];
    })
    .filter((words) => words.length > 0);
  const order = lists.length > count ? picker.shuffle(lists) : lists;
  const taken: ListedWord[] = [];
  for (
    let left = order;
    taken.length < count && left.length > 0;
    left = left.filter(({ length }) => length > 0)
  ) {
    for (const words of left) {
      if (taken.length >= count) break;
      let word = words.shift();
      while (word && taken.some(({ family }) => family === word!.family)) word = words.shift();
      if (word) taken.push(word);
    }
  }
  return taken;
}

/** What the steps before the focus taught, the latest first. */
export function stepsBefore({ sequence, group, focus, known }: LessonInput, most: number): PatternId[][] {
  const before = sequence?.steps.slice(0, group.step).toReversed() ?? [];
  return before
    .map(({ teaches }) => teaches.filter((id) => known.knows(id) && !focus.includes(id)))
    .filter((ids) => ids.length > 0)
    .slice(0, most);
}
