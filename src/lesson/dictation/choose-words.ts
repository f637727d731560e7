import type { PatternId, Reading } from '../../analyze/types.ts';
import { isForClass } from '../fit-words.ts';
import type { KnownWord } from '../known-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Picker } from '../picker.ts';

/** The number of words in ten that practise the lesson's patterns. The rest practise the patterns of the steps before. */
const FRESH_IN_TEN = 7;
/** The number of earlier steps whose patterns count as recent. */
const RECENT_STEPS = 6;

/**
 * Chooses words to write. Words that practise the lesson come first, then words of the steps before: in a lesson on ai
 * `rain`, then `tooth`.
 * Words known by sight or pronounced in two ways are left out, because they show no pattern. Words that children do not
 * know are left out too.
 */
export function chooseWords(
  { known, bank, focus, group, sequence }: LessonInput,
  count: number,
  picker: Picker,
): KnownWord[] {
  const stepsUpTo = (last: number): PatternId[] =>
    (sequence?.steps.slice(0, last) ?? []).flatMap(({ teaches }) => teaches);
  const steps = sequence?.steps.slice(Math.max(0, group.step - 1 - RECENT_STEPS), group.step - 1) ?? [];
  const recent = new Set(steps.flatMap(({ teaches }) => teaches).filter((id) => !focus.includes(id)));
  const explicit = new Set([...focus, ...group.alsoTaught, ...stepsUpTo(group.step)]);
  // Nobody can hear the spelling of the weak vowel in doctor or final, so it is asked for only once it was taught.
  const hasWeakVowel = ({ units }: Reading): boolean =>
    units.some(({ pattern }) => /-weak$|^schwa-/.test(pattern) && !explicit.has(pattern));
  const usable = known.words.filter(
    ({ word, standing, homograph, reading }) =>
      standing !== 'by-sight' &&
      !homograph &&
      reading.source !== 'guess' &&
      reading.source !== 'none' &&
      !hasWeakVowel(reading) &&
      isForClass(word, reading.base, bank),
  );
  const needs = (ids: Iterable<PatternId>) => {
    const wanted = new Set(ids);
    return ({ reading }: KnownWord): boolean => reading.requires.some((id) => wanted.has(id));
  };
  const fresh = usable.filter(needs(focus));
  const before = usable.filter((word) => !fresh.includes(word));
  const later = before.filter(needs(recent));
  const first = picker.pickEarly(fresh, Math.ceil((count * FRESH_IN_TEN) / 10));
  const taken = [...picker.shuffle(first)];
  for (const more of [later, before, fresh]) {
    const left = more.filter((word) => !taken.includes(word));
    taken.push(...picker.pickEarly(left, count - taken.length));
  }
  return taken;
}

/** Chooses by-sight words to write. Words of the latest steps are likelier; the group's own words come after them. */
export function chooseBySight(
  { known, group, sequence }: LessonInput,
  count: number,
  picker: Picker,
): string[] {
  const taught = (sequence?.steps.slice(0, group.step) ?? []).toReversed().flatMap(({ bySight }) => bySight);
  const words = [...new Set([...taught, ...group.bySight])].filter((word) => known.reads(word));
  return picker.pickEarly(words, count);
}
