import type { PatternId } from '../analyze/types.ts';
import { fitWords, oneOfFamily } from './fit-words.ts';
import type { LessonInput } from './lesson-input.ts';
import { rowOf, wordsWith } from './new-pattern/choose-words.ts';
import { isMeaningTrueOf } from './new-pattern/say-rule.ts';
import type { Picker } from './picker.ts';
import { type ListedWord, listWords } from './word-lists/listed-words.ts';

/** If there are fewer plain words (rain) than this, other words that need the pattern (daybreak) come after them. */
const ENOUGH_PLAIN = 12;
/**
 * Patterns that a step is mainly about. The other patterns of the step are shown only in words that also have the main
 * pattern.
 * A step of long words shows the i of radio, but not the i of ski. A step of consonant-le shows the st of castle, but
 * not the st of listen.
 */
const LEADS: readonly { readonly id: PatternId; readonly leads: RegExp }[] = [
  { id: 'syllables-3', leads: /./ },
  { id: 'consonant-le', leads: /^st$/ },
];
/**
 * The pattern of a consonant with an e after it (breathe). This pattern has no letters of its own, so it gets no words
 * in a step that also has other patterns.
 */
const SHOWS_NOTHING = 'silent-e';
/**
 * Matches patterns for dividing words. Such a pattern gets no words in a step that also teaches the kinds of syllables
 * it makes. For example, prom·ise is left out in a step of open syllables.
 */
const WAY_TO_DIVIDE = /^divide-/;

/**
 * Returns the words that show a pattern in a step. If another pattern leads the step, only words with this leading
 * pattern are returned.
 */
export function wordsOfPattern(input: LessonInput, id: PatternId): ListedWord[] {
  const { focus } = input;
  if (id === SHOWS_NOTHING && focus.length > 1 && focus.includes(id)) return [];
  if (WAY_TO_DIVIDE.test(id) && focus.some((other) => !WAY_TO_DIVIDE.test(other))) return [];
  const words = allWordsOfPattern(input, id);
  if (!focus.includes(id)) return words;
  const lead = LEADS.find((each) => each.id !== id && focus.includes(each.id) && each.leads.test(id));
  return lead ? words.filter(({ requires }) => requires.includes(lead.id)) : words;
}

/**
 * Returns the words that show a pattern. If there are enough plain words, only plain words are returned. Contractions
 * return their short forms, which other lists do not contain.
 */
function allWordsOfPattern(input: LessonInput, id: PatternId): ListedWord[] {
  if (/^(?:contraction|possessive)/.test(id))
    return listWords(input).filter(({ requires }) => requires.includes(id));
  const row = rowOf(id);
  const plain = row ? wordsWith(input, row) : [];
  if (plain.length >= ENOUGH_PLAIN) return plain;
  return oneOfFamily([
    ...plain,
    ...fitWords(input).filter(
      (word) =>
        word.requires.includes(id) &&
        isMeaningTrueOf(id, { word: word.word, base: word.reading.base }, input.bank),
    ),
  ]);
}

/**
 * Takes words of several patterns in turn. Each pattern that has words takes part, and none has many more words than
 * another. For -ed the words are `jumped`, `sailed`, `landed`. Words that meet `isFirst` come before the others of
 * their pattern, and only words that meet `isFit` are taken.
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

/**
 * Patterns whose letters no class practises together. The nth of month and the dth of width end few words. The ffe of
 * giraffe is one of many endings with a silent e.
 */
const NO_UNIT = /^(?:end-(?:nth|lch|lth|dth)|silent-e)$/;

/** Whether the letters of a pattern may be named or put on a card: str and oa may, dth may not. */
export function isPractised(id: PatternId): boolean {
  return !NO_UNIT.test(id);
}

/** The patterns of the steps before the focus, the latest first. */
export function stepsBefore({ sequence, group, focus, known }: LessonInput, most: number): PatternId[][] {
  const before = sequence?.steps.slice(0, group.step).toReversed() ?? [];
  return before
    .map(({ teaches }) => teaches.filter((id) => known.knows(id) && !focus.includes(id)))
    .filter((ids) => ids.length > 0)
    .slice(0, most);
}
