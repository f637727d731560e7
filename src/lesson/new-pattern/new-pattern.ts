import { type SoundStyle, soundsIn } from '../../analyze/index.ts';
import type { Pattern, Reading } from '../../analyze/types.ts';
import { patternLabel } from '../../marks/pattern-label.ts';
import { soundName } from '../../marks/sound-names.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { numberChoice } from '../number-choice.ts';
import type { Picker } from '../picker.ts';
import type { ListedWord } from '../word-lists/listed-words.ts';
import { chooseWordsToSort, rowOf, wordsWith } from './choose-words.ts';
import { placesOf } from './places.ts';
import { sayRule } from './say-rule.ts';

/** The fewest words that must show the pattern with which the part begins. */
const ENOUGH = 5;
const FEWEST = 2;
/**
 * Families that the part leaves out. Ways to divide are shown by words that are divided (`syllable-division`), and a
 * whole word has no rule.
 */
const NOT_HERE = /^(?:syllable division|root)$/;

/** The new pattern of the day: its letters, sound, key word, place and rule, and words to sort by whether they have it. */
export const newPattern: PartMaker = {
  id: 'new-pattern',
  title: 'New pattern',
  extra: true,
  use: 'Teach today’s pattern: say the rule, then pupils sort words that have it and words that do not.',
  choices(input) {
    const rows = rowsOf(input);
    return [
      ...(rows.length > 1
        ? [
            {
              id: 'pattern',
              label: 'Pattern',
              options: rows.map(({ id }) => ({ value: id, label: patternLabel(id) })),
              usual: usualOf(input, rows)!.id,
            },
          ]
        : []),
      numberChoice('count', 'Words to sort', [8, 10, 12, 16], 10),
    ];
  },
  make(input, chosen, picker) {
    const rows = rowsOf(input);
    const row = rows.find(({ id }) => id === chosen('pattern')) ?? usualOf(input, rows);
    if (!row) {
      return {
        blocks: [],
        says:
          input.focus.length === 0
            ? 'Nothing has been taught yet. Choose the group’s step to list its words here.'
            : 'The group can read too few words with the patterns of this step. Try again a step or two later.',
      };
    }
    const sort = sortBlocks(input, row, Number(chosen('count')) || 10, picker);
    const shown = new Set(
      sort
        .at(-1)!
        .rows.map(([has = '']) => has)
        .filter((word) => word !== ''),
    );
    const words = wordsWith(input, row).filter(({ word }) => shown.has(word));
    const blocks = [patternBlock(input, row, words, picker), ...sort];
    return { blocks, says: null };
  },
};

/** Returns the patterns of the lesson that words can show. */
function rowsOf(input: LessonInput): Pattern[] {
  return input.focus.flatMap((id) => {
    const row = rowOf(id);
    return row && id !== 'irregular' && !NOT_HERE.test(row.family) && wordsWith(input, row).length >= FEWEST
      ? [row]
      : [];
  });
}

function usualOf(input: LessonInput, rows: readonly Pattern[]): Pattern | undefined {
  return rows.find((row) => wordsWith(input, row).length >= ENOUGH) ?? rows[0];
}

function patternBlock(
  input: LessonInput,
  row: Pattern,
  shown: readonly ListedWord[],
  picker: Picker,
): LessonBlock {
  const words = wordsWith(input, row);
  const isKey = ({ word }: { word: string }): boolean => word === row.keyWord;
  const key = words.find(isKey) ?? picker.pickEarly(words.slice(0, 8), 1)[0]!;
  const letters = lettersIn(row, key.reading.units);
  const readings = [key, ...shown].map(({ reading }) => reading);
  const cells = [
    { head: 'Letters', shows: 'both', text: letters },
    { head: 'Key word', shows: 'both', text: key.word },
    {
      head: 'Sound',
      shows: 'key',
      text: letters === '' ? '' : soundsHeard(row, readings, input.known.style),
    },
    {
      head: 'Where',
      shows: 'key',
      text: letters === '' ? row.where : placesOf(row, input.known.analyses, readings),
    },
  ] as const;
  // Empty cells are left out: a blend has no sound of its own, and a way to divide has no letters.
  const filled = cells.filter(({ text }) => text !== '');
  return {
    id: 'pattern',
    title: patternLabel(row.id),
    layout: 'table',
    note: `Say to the group: ${sayRule(row, input.known.style)}`,
    columns: filled.map(({ head, shows }) => ({ head, shows })),
    rows: [filled.map(({ text }) => text)],
  };
}

/** Returns the sounds of the letters in the words shown: `z or s` for the -s of hands and gasps. */
function soundsHeard(row: Pattern, readings: readonly Reading[], style: SoundStyle): string {
  const { id } = row;
  const sounds = soundsIn(row, style.accent);
  const heard = readings.flatMap(({ units }) =>
    units.filter(({ pattern }) => pattern === id).map(({ sound }) => soundName(sound, style)),
  );
  const usual = sounds[0] ? [soundName(sounds[0], style)] : [];
  return [...new Set(heard.length > 0 ? heard : usual)].join(' or ');
}

/** Returns the letters as the key word has them: the ce of rice, not the c of city. -ing and un- have their hyphen. */
function lettersIn(
  { id, family, letters }: Pattern,
  units: readonly { readonly pattern: string; readonly letters: string }[],
): string {
  const own = units.find(({ pattern }) => pattern === id)?.letters;
  const first = letters.split(' ')[0] ?? '';
  const spelt = own && letters.split(' ').includes(own) ? own : first;
  if (family === 'suffix') return `-${first}`;
  if (family === 'prefix') return `${first}-`;
  return spelt;
}

function sortBlocks(input: LessonInput, row: Pattern, count: number, picker: Picker): LessonBlock[] {
  const words = chooseWordsToSort(input, row, count, picker);
  if (!words) {
    const few = wordsWith(input, row).slice(0, count);
    return [
      {
        id: 'words',
        title: 'Words to read',
        layout: 'words',
        columns: [{ head: '', shows: 'both' }],
        rows: few.map(({ word }) => [word]),
        note: 'There are too few words to sort yet, so these are to read.',
      },
    ];
  }
  const rows = Math.max(words.has.length, words.hasNot.length);
  return [
    {
      id: 'words',
      title: 'Read the words, then sort them',
      layout: 'words',
      columns: [{ head: '', shows: 'both' }],
      rows: picker.shuffle([...words.has, ...words.hasNot]).map((word) => [word]),
    },
    {
      id: 'sort',
      title: `Sort: ${patternLabel(row.id)}`,
      layout: 'table',
      columns: [
        { head: 'Has it', shows: 'blank' },
        { head: 'Has it not', shows: 'blank' },
      ],
      rows: Array.from({ length: rows }, (_, i) => [words.has[i] ?? '', words.hasNot[i] ?? '']),
    },
  ];
}
