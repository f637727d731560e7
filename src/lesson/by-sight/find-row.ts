import { fitWords, isEndTaught } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Picker } from '../picker.ts';

/** The number of times that the word to find is in its row. */
const TIMES = 3;
/** Returns the number of other words that fit on a line beside the word: 4 for was, 3 for would, 2 for through. */
const othersBeside = (word: string): number => (word.length < 5 ? 4 : word.length < 7 ? 3 : 2);
/** The fewest other words that make a row worth looking through. They must look like the word and differ from it. */
const FEWEST_OTHERS = 2;

/**
 * Makes a row in which pupils find a by-sight word. The word is there three times among words that look like it and
 * that the pupils can read (for said: sad, sand, and). Returns an empty row where there is nothing to look through.
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

/**
 * Puts the word at three places. Some of these may be side by side, so that no place can be guessed from the one
 * before.
 */
function spread(word: string, others: readonly string[], picker: Picker): string[] {
  const length = others.length + TIMES;
  const places = picker.pick(
    Array.from({ length }, (_, i) => i),
    TIMES,
  );
  const left = [...others];
  return Array.from({ length }, (_, i) => (places.includes(i) ? word : left.shift()!));
}

/**
 * Returns how much two words look alike: by the same first and last letters, shared letters, and about the same length.
 * Returns 0 for little likeness.
 */
function likeness(one: string, other: string): number {
  const shared = [...new Set(one)].filter((letter) => other.includes(letter)).length;
  const first = one[0] === other[0] ? 2 : 0;
  const last = one.at(-1) === other.at(-1) ? 1 : 0;
  const length = Math.abs(one.length - other.length);
  const score = shared + first + last - 1.5 * length;
  return shared >= 2 || (one.length <= 2 && shared >= 1) ? Math.max(0, score - 1) : 0;
}
