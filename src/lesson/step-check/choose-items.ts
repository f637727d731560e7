import { fitWords, oneOfFamily } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Picker } from '../picker.ts';
import type { ListedWord } from '../word-lists/listed-words.ts';
import { makeNonsense } from '../word-lists/make-nonsense.ts';

/** Where the patterns of the step give too few words or made-up words, those of so many steps before help. */
const STEPS_BACK = 8;
const STEPS_BACK_MADE_UP = 30;
/** Read aloud, a th at the start may be of thin or of this, a wh before o of whole or of whale. */
const TWO_WAYS = /^(?:th|who)/;

/**
 * Real words that show whether the step was learnt: each with a pattern of the step, the patterns in turn so that none is missed, the
 * commoner words likelier; where there are too few, words of the latest steps.
 */
export function chooseRealWords(input: LessonInput, count: number, picker: Picker): string[] {
  const fit = fitWords(input);
  const taken: ListedWord[] = [];
  const add = (patterns: readonly string[]): void => {
    const lists = patterns.map((id) => {
      const words = oneOfFamily(fit.filter((word) => word.requires.includes(id)));
      return picker.pickEarly(words, count);
    });
    for (let at = 0; taken.length < count && lists.some((list) => list.length > at); at++) {
      for (const list of picker.shuffle(lists)) {
        const word = list[at];
        if (!word || taken.length >= count || taken.some(({ family }) => family === word.family)) continue;
        taken.push(word);
      }
    }
  };
  for (const patterns of [input.focus, ...stepsBefore(input)]) if (taken.length < count) add(patterns);
  return picker
    .shuffle(taken)
    .sort((a, b) => a.syllables - b.syllables)
    .map(({ word }) => word);
}

/** Made-up words with a pattern of the step, or of the steps before where these give too few. */
export function chooseMadeUp(input: LessonInput, count: number, picker: Picker): string[] {
  const make = (patterns: readonly string[]): string[] =>
    makeNonsense(input, new Set(patterns), 2 * count, picker).filter((word) => !TWO_WAYS.test(word));
  const found = make(input.focus).slice(0, count);
  if (found.length === count) return found;
  const before = make(stepsBefore(input, STEPS_BACK_MADE_UP).flat()).filter((word) => !found.includes(word));
  return [...found, ...before].slice(0, count);
}

/** What the steps before the focus taught, the latest first. */
function stepsBefore({ sequence, group, focus, known }: LessonInput, most = STEPS_BACK): string[][] {
  const before = sequence?.steps.slice(0, group.step).toReversed() ?? [];
  return before
    .map(({ teaches }) => teaches.filter((id) => known.knows(id) && !focus.includes(id)))
    .filter((ids) => ids.length > 0)
    .slice(0, most);
}
