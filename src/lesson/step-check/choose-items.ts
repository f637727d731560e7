import type { PatternId } from '../../analyze/types.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Picker } from '../picker.ts';
import type { ListedWord } from '../word-lists/listed-words.ts';
import { makeNonsense } from '../word-lists/make-nonsense.ts';
import { stepsBefore, takeInTurn } from '../words-of-patterns.ts';

/**
 * The number of earlier steps whose patterns are used where the patterns of the step give too few words or made-up
 * words.
 */
const STEPS_BACK = 8;
const STEPS_BACK_MADE_UP = 30;
/** The most made-up words with the same last letters, and the number of these letters: rense, brense. */
const MOST_ALIKE = 2;
const ALIKE_END = 3;
/** Beginnings that can be read aloud in two ways: a th as in thin or this, and a wh before o as in whole or whale. */
const TWO_WAYS = /^(?:th|who)/;

/**
 * Chooses real words that show whether the step was learnt. The patterns of the step come in turn, so that none is
 * missed. Commoner words are likelier. Where there are too few, words of the latest steps are added.
 */
export function chooseRealWords(input: LessonInput, count: number, picker: Picker): string[] {
  const taken: ListedWord[] = [];
  for (const patterns of [input.focus, ...stepsBefore(input, STEPS_BACK)]) {
    const isFit = ({ family }: ListedWord): boolean => !taken.some((word) => word.family === family);
    taken.push(...takeInTurn(input, patterns, count - taken.length, picker, { isFit }));
    if (taken.length >= count) break;
  }
  return picker
    .shuffle(taken)
    .sort((a, b) => a.syllables - b.syllables)
    .map(({ word }) => word);
}

/** Made-up words, and how many of them have patterns of the step. */
export interface MadeUp {
  readonly words: readonly string[];
  /** The number of words, from the first on, that need a pattern of the step. */
  readonly ofStep: number;
}

/** Makes words with each pattern of the step in turn, then with patterns of the steps before where these give too few. */
export function chooseMadeUp(input: LessonInput, count: number, picker: Picker): MadeUp {
  const make = (patterns: readonly PatternId[]): string[] =>
    makeNonsense(input, new Set(patterns), 2 * count, picker).filter((word) => !TWO_WAYS.test(word));
  const lists = input.focus.map((id) => make([id])).filter((words) => words.length > 0);
  const found: string[] = [];
  for (let at = 0; at < count * 2 && found.length < count; at++) {
    for (const words of picker.shuffle(lists)) {
      const word = words[at];
      if (word && found.length < count && isApart(word, found)) found.push(word);
    }
  }
  if (found.length === count) return { words: found, ofStep: count };
  const before: string[] = [];
  for (const word of make(stepsBefore(input, STEPS_BACK_MADE_UP).flat()))
    if (isApart(word, [...found, ...before])) before.push(word);
  return { words: [...found, ...before].slice(0, count), ofStep: found.length };
}

/**
 * Whether a made-up word neither begins like another made-up word (plor, plore) nor ends like several others (rense,
 * brense).
 */
function isApart(word: string, found: readonly string[]): boolean {
  const alike = found.filter((one) => one.length > ALIKE_END && word.endsWith(one.slice(-ALIKE_END)));
  return alike.length < MOST_ALIKE && !found.some((one) => one.slice(0, 3) === word.slice(0, 3));
}
