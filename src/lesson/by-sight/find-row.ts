import { fitWords, isEndTaught } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Picker } from '../picker.ts';

/** How often the word to find is in its row. */
const TIMES = 3;
/** So many others fit a line beside it: of was, would, through. */
const othersBeside = (word: string): number => (word.length < 5 ? 4 : word.length < 7 ? 3 : 2);
/** At least so many words that look like it, and differ from it, make a row worth looking through. */
const FEWEST_OTHERS = 2;

/**
 * A row in which pupils find a by-sight word: three times among words they can read that look like it (for said: sad, sand, and).
 * Empty where there is nothing to look through.
 */
export function findRow(
  input: LessonInput,
  word: string,
  others: readonly string[],
  picker: Picker,
): string[] {
  const small = word.toLowerCase();
  const pool = [
    ...new Set([
      ...fitWords(input)
        .slice(0, 1500)
        .filter((each) => isEndTaught(each, input))
        .map((each) => each.word),
      ...others.map((each) => each.toLowerCase()),
    ]),
  ].filter((each) => each !== small && input.known.reads(each));
  const like = pool
    .map((each) => ({ each, likeness: likeness(small, each) }))
    .filter(({ likeness }) => likeness > 0)
    .sort((a, b) => b.likeness - a.likeness)
    .slice(0, 10)
    .map(({ each }) => each);
  const fill = pool.filter((each) => Math.abs(each.length - small.length) <= 1 && !like.includes(each));
  const count = othersBeside(small);
  const distractors = [...picker.pick(like, count)];
  if (distractors.length < count) distractors.push(...picker.pickEarly(fill, count - distractors.length));
  if (distractors.length < FEWEST_OTHERS) return [];
  return spread(word, distractors, picker);
}

/** The word at three places, of which any may be side by side, so that none can be told by the one before. */
function spread(word: string, others: readonly string[], picker: Picker): string[] {
  const length = others.length + TIMES;
  const places = picker.pick(
    Array.from({ length }, (_, i) => i),
    TIMES,
  );
  const left = [...others];
  return Array.from({ length }, (_, i) => (places.includes(i) ? word : left.shift()!));
}

/** How much two words look alike: the same first and last letters, letters shared, about the same length; 0 for little. */
function likeness(one: string, other: string): number {
  const shared = [...new Set(one)].filter((letter) => other.includes(letter)).length;
  const first = one[0] === other[0] ? 2 : 0;
  const last = one.at(-1) === other.at(-1) ? 1 : 0;
  const length = Math.abs(one.length - other.length);
  const score = shared + first + last - 1.5 * length;
  return shared >= 2 || (one.length <= 2 && shared >= 1) ? Math.max(0, score - 1) : 0;
}
