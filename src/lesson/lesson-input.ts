import type { Analyzer, Judge } from '../analyze/index.ts';
import type { Group, PatternId, Sequence } from '../analyze/types.ts';
import type { KnownWords } from './known-words.ts';
import type { EarlierSheet } from './spaced-review/earlier-sheets.ts';
import type { WordBank } from './word-bank.ts';

/** A text the lesson is built around, as the group reads it. Each line is a paragraph (`src/passage`). */
export interface LessonText {
  readonly title: string;
  readonly text: string;
}

/** The input that every part of a lesson is made from. */
export interface LessonInput {
  readonly group: Group;
  readonly sequence: Sequence | null;
  /** The day of the lesson: `2026-11-25`. */
  readonly day: string;
  readonly bank: WordBank;
  readonly analyzer: Analyzer;
  readonly judge: Judge;
  readonly known: KnownWords;
  /** The patterns of the lesson (`findFocus`); empty where nothing was taught yet. */
  readonly focus: readonly PatternId[];
  readonly passage: LessonText | null;
  /** The words on the group's sheets so far. There are none where this is left out. */
  readonly earlier?: readonly EarlierSheet[];
}

/**
 * Returns the patterns the lesson is about, which are the known patterns of the group's step. If the step teaches none,
 * the last earlier step that teaches some is used. Without a sequence, the last three patterns the group was taught are
 * used.
 */
export function findFocus(
  group: Group,
  sequence: Sequence | null,
  knows: (id: PatternId) => boolean,
): PatternId[] {
  for (let step = sequence ? group.step : 0; step > 0; step--) {
    const taught = (sequence?.steps[step - 1]?.teaches ?? []).filter(knows);
    if (taught.length > 0) return taught;
  }
  return group.alsoTaught.filter(knows).slice(-3);
}
