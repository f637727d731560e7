import type { Pattern } from '../../analyze/types.ts';
import { findExamples } from '../find-examples.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Picker } from '../picker.ts';
import { correspondences } from './correspondences.ts';
import type { TaughtDays } from './days-since-taught.ts';

/** The largest share of a review that today's patterns may have. */
const TODAY = 1 / 3;

/**
 * Chooses letters to review today: some letters of the lesson, and the rest by chance. The chance of a letter is 1
 * divided by its age, so recently taught letters are likelier. A pattern returns at gaps that grow with its age: one
 * day, two, four, eight (expanding retrieval: T. K. Landauer and R. A. Bjork 1978, from memory).
 */
export function chooseReview(
  { focus, known }: Pick<LessonInput, 'focus' | 'known'>,
  { days }: TaughtDays,
  count: number,
  picker: Picker,
): Pattern[] {
  const all = correspondences.filter(({ id, family }) => known.knows(id) && family !== 'schwa');
  const shown = all.filter(({ id }) => findExamples(known, id).length > 0);
  // Before any word can be read, letters are reviewed without words.
  const taught = shown.length > 2 ? shown : all;
  const today = taught.filter(({ id }) => focus.includes(id));
  const now = picker.pick(today, Math.ceil(count * TODAY));
  const before = taught.filter((row) => !today.includes(row) && days.has(row.id));
  const age = ({ id }: Pattern): number => days.get(id)!;
  const later = picker.pickWeighted(before, (row) => 1 / (age(row) + 1), count - now.length);
  return setApart(picker.shuffle([...now, ...later]));
}

/** Orders rows so that rows that sound or look alike are not side by side, as far as possible. */
function setApart(rows: readonly Pattern[]): Pattern[] {
  const left = [...rows];
  const ordered: Pattern[] = [];
  while (left.length > 0) {
    const last = ordered.at(-1);
    const next = last ? left.findIndex((row) => !isAlike(row, last)) : 0;
    ordered.push(...left.splice(Math.max(0, next), 1));
  }
  return ordered;
}

function isAlike(one: Pattern, other: Pattern): boolean {
  const shares = (a: readonly string[], b: readonly string[]): boolean => a.some((each) => b.includes(each));
  return shares(one.sounds, other.sounds) || shares(one.letters.split(' '), other.letters.split(' '));
}
