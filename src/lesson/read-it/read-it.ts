import { READING_LEVELS, tokenize } from '../../analyze/index.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { setLines } from './set-lines.ts';

const MOST_NAMED = 12;
/** An empty cell to write in. */
const EMPTY = '\u00a0';
const MARKS: readonly string[] = ['First', 'Second', 'Third'];

/**
 * The whole passage in large print with a running count of words, and boxes for time, errors and words correct a
 * minute.
 */
export const readIt: PartMaker = {
  id: 'read-it',
  title: 'Read it',
  extra: true,
  use: 'A pupil reads the passage aloud while you mark where one minute ends and count the errors.',
  choices: () => [],
  make(input) {
    const lines = setLines(input.passage?.text ?? '');
    const total = lines.reduce((most, { words }) => Math.max(most, words ?? 0), 0);
    if (total === 0)
      return { blocks: [], says: 'Choose a passage to print it large with a count of its words.' };
    const { unread, percent } = unreadWords(input);
    if (percent < READING_LEVELS.withHelp) {
      return {
        blocks: [],
        says: 'The group cannot read enough of this passage yet. Replace some of its words, or choose another passage.',
      };
    }
    return {
      says: null,
      blocks: [
        {
          id: 'passage',
          title: '',
          layout: 'passage',
          columns: [
            { head: '', shows: 'free' },
            { head: '', shows: 'free' },
          ],
          rows: lines.map(({ text, words }) => [text, words === null ? '' : String(words)]),
          ...(unread.length > 0 && {
            note: `Read these words with the group first, because they are not yet decodable: ${unread.join(', ')}.`,
          }),
        },
        scoreBlock(total),
      ],
    };
  },
};

function scoreBlock(total: number): LessonBlock {
  return {
    id: 'fluency',
    title: 'One minute',
    layout: 'grid',
    note: `The passage has ${total} words. Put a mark after the last word read in one minute. Words correct a minute: words read less errors, times 60, divided by the seconds. Write your school’s own benchmark in the last box if it has one.`,
    columns: ['Reading', 'Words read', 'Errors', 'Seconds', 'Words correct a minute', 'Benchmark'].map(
      (head) => ({
        head,
        shows: 'free',
      }),
    ),
    rows: MARKS.map((mark) => [mark, EMPTY, EMPTY, EMPTY, EMPTY, EMPTY]),
  };
}

function unreadWords({ passage, known }: LessonInput): { unread: string[]; percent: number } {
  const text = passage?.text ?? '';
  const words = tokenize(text).filter(({ kind }) => kind === 'word');
  const unread = words.map(({ start, end }) => text.slice(start, end)).filter((word) => !known.reads(word));
  return {
    unread: [...new Set(unread)].slice(0, MOST_NAMED),
    percent: words.length === 0 ? 0 : 100 - (100 * unread.length) / words.length,
  };
}

/**
 * Returns the words read correctly in a minute: the words read, less the errors, by the time taken. Common practice, no
 * source. Returns null where there is no such number: no time, or more errors than words.
 * @param seconds Time taken.
 */
export function wordsCorrectAMinute(words: number, errors: number, seconds: number): number | null {
  const isCount = (value: number): boolean => Number.isFinite(value) && value >= 0;
  if (!isCount(words) || !isCount(errors) || !Number.isFinite(seconds) || seconds <= 0 || errors > words)
    return null;
  return Math.round(((words - errors) * 60) / seconds);
}
