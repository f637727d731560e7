import { patternLabel } from '../../marks/pattern-label.ts';
import { fitWords } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { numberChoice } from '../number-choice.ts';
import { findDue, lastMet } from './find-due.ts';

/** The number of days without a sheet after which a pattern counts as away for a long time. */
const LONG = 30;
const MOST_PATTERNS = 8;

/** Words of earlier sheets that are due again, and for the teacher the patterns that have not come back for a long time. */
export const spacedReview: PartMaker = {
  id: 'spaced-review',
  title: 'Spaced review',
  extra: true,
  use: 'Pupils read words of earlier sheets that are due again after a day, three, a week, two weeks or a month.',
  choices: () => [
    numberChoice('words', 'Words', [6, 8, 10, 12, 16], 8),
    numberChoice('by-sight', 'By-sight words', [0, 2, 4, 6], 4),
  ],
  make(input, chosen) {
    const earlier = input.earlier ?? [];
    const fit = new Set(fitWords(input).map(({ word }) => word));
    const words = due(input, 'words', (word) => fit.has(word)).slice(0, Number(chosen('words')) || 0);
    const bySight = due(input, 'bySight', input.known.reads).slice(0, Number(chosen('by-sight')) || 0);
    const blocks = [
      dueBlock('words', 'Words that are due again', words),
      dueBlock('by-sight', 'By-sight words that are due again', bySight),
      longBlock(input),
    ].filter(({ rows }) => rows.length > 0);
    if (blocks.length > 0) return { blocks, says: null };
    return {
      blocks,
      says:
        earlier.length === 0
          ? 'No sheet of this group was printed or saved yet. Its words come back here from the next day on.'
          : 'Nothing is due today. Words of earlier sheets come back after a day, three, a week, two weeks and a month.',
    };
  },
};

function due(
  { earlier = [], day }: LessonInput,
  kind: 'words' | 'bySight',
  isFit: (word: string) => boolean,
): { item: string; days: number }[] {
  const sheets = earlier.map((sheet) => ({ day: sheet.day, items: sheet[kind] }));
  return findDue(sheets, day).filter(({ item }) => isFit(item));
}

function dueBlock(
  id: string,
  title: string,
  items: readonly { readonly item: string; readonly days: number }[],
): LessonBlock {
  return {
    id,
    title,
    layout: 'table',
    columns: [
      { head: '', shows: 'both' },
      { head: 'Last on a sheet', shows: 'key' },
    ],
    rows: items.map(({ item, days }) => [item, ago(days)]),
  };
}

/** Returns patterns that were on sheets but not for a long time. The pattern longest away comes first. */
function longBlock({ earlier = [], day, known }: LessonInput): LessonBlock {
  const met = lastMet(
    earlier.map((sheet) => ({ day: sheet.day, items: sheet.patterns })),
    day,
  );
  const long = [...met]
    .filter(([id, { days }]) => days >= LONG && known.knows(id))
    .sort(([, a], [, b]) => b.days - a.days)
    .slice(0, MOST_PATTERNS);
  return {
    id: 'long',
    title: 'Patterns that have not come back for a month',
    layout: 'table',
    columns: [
      { head: 'Pattern', shows: 'key' },
      { head: 'Last on a sheet', shows: 'key' },
    ],
    rows: long.map(([id, { days }]) => [patternLabel(id), ago(days)]),
  };
}

function ago(days: number): string {
  return days === 1 ? 'yesterday' : `${days} days ago`;
}
