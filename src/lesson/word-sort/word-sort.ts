import { soundsIn } from '../../analyze/index.ts';
import { keyWord } from '../../marks/pattern-label.ts';
import { soundName } from '../../marks/sound-names.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { PartMaker } from '../lesson-part.ts';
import { numberChoice } from '../number-choice.ts';
import { correspondences, heardAs } from '../review/correspondences.ts';
import { chooseSort, lettersOf, sortableSounds } from './choose-sort.ts';

/** Mixed words to sort under two to four spellings of one sound. The answer key has them sorted. */
export const wordSort: PartMaker = {
  id: 'word-sort',
  title: 'Word sort',
  extra: true,
  use: 'Pupils read mixed words and write each under its spelling of one sound.',
  choices: (input) => [
    {
      id: 'sound',
      label: 'Sound',
      options: sortableSounds(input).map((sound) => ({
        value: sound,
        label: `${soundName(sound, input.known.style)} as in ${wordOf(input, sound)}`,
      })),
      usual: sortableSounds(input)[0] ?? '',
    },
    numberChoice('spellings', 'Spellings', [2, 3, 4], 3),
    numberChoice('count', 'How many', [8, 12, 16, 20], 12),
  ],
  make(input, chosen, picker) {
    const sound = sortableSounds(input).find((each) => each === chosen('sound')) ?? sortableSounds(input)[0];
    const most = Math.min(4, Math.max(2, Number(chosen('spellings')) || 3));
    const count = Math.min(20, Math.max(8, Number(chosen('count')) || 12));
    const columns = sound === undefined ? null : chooseSort(input, sound, most, count, picker);
    if (sound === undefined || !columns) {
      return {
        blocks: [],
        says: 'No sound has two spellings yet that the group can read. Try again a step or two later.',
      };
    }
    const key = wordOf(
      input,
      sound,
      columns.map(({ letters }) => letters),
    );
    const longest = Math.max(...columns.map(({ words }) => words.length));
    return {
      says: null,
      made: {
        count: columns.reduce((sum, { words }) => sum + words.length, 0),
        spellings: columns.length,
      },
      blocks: [
        {
          id: 'words',
          title: `Words with the sound in ${key}`,
          layout: 'words',
          columns: [{ head: '', shows: 'both' }],
          rows: picker.shuffle(columns.flatMap(({ words }) => words)).map((word) => [word]),
          note: `Every word has the sound ${soundName(sound, input.known.style)} as in ${key}. Pupils read a word, find the letters that spell the sound, and write it under them.`,
        },
        {
          id: 'sort',
          title: 'Write each word under its spelling',
          layout: 'table',
          columns: columns.map(({ letters }) => ({ head: letters, shows: 'blank' })),
          rows: Array.from({ length: longest }, (_, i) => columns.map(({ words }) => words[i] ?? '')),
        },
      ],
    };
  },
};

/** Returns the key word of the first spelling that has one. */
function wordOf(input: LessonInput, sound: string, sorted = lettersOf(input, sound)): string {
  const { known } = input;
  const rows = correspondences.filter(
    (row) => known.knows(row.id) && heardAs(soundsIn(row, known.accent)[0]!) === sound,
  );
  const shown = sorted.flatMap((one) => rows.filter(({ letters }) => letters.split(' ').includes(one)));
  const row = shown[0] ?? rows[0];
  return row ? keyWord(row.id) : '';
}
