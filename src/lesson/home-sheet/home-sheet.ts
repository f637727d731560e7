import type { Pattern } from '../../analyze/types.ts';
import { chooseBySight } from '../dictation/choose-words.ts';
import { fitWords, oneOfFamily } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { rowOf, wordsWith } from '../new-pattern/choose-words.ts';
import type { Picker } from '../picker.ts';
import { homeTexts } from './home-texts.ts';

const WORDS = 8;
/** So many of them show the pattern the sheet is about. */
const SUBJECT_WORDS = 5;
const BY_SIGHT = 4;
/** Fewer words are no practice. */
const FEWEST = 3;

/** Half a page for whoever reads with the child at home: what is learnt, words to read, how to help. */
export const homeSheet: PartMaker = {
  id: 'home-sheet',
  title: 'Home sheet',
  extra: true,
  use: 'Send half a page home in plain words, in English or Spanish, for whoever reads with the child.',
  choices: () => [
    {
      id: 'language',
      label: 'Language',
      options: [
        { value: 'en', label: 'English' },
        { value: 'es', label: 'Spanish' },
        { value: 'both', label: 'English and Spanish' },
      ],
      usual: 'en',
    },
  ],
  make(input, chosen, picker) {
    const words = chooseWords(input, picker);
    if (words.length < FEWEST) {
      return {
        blocks: [],
        says: 'The group can read too few words for a home sheet yet. Choose a later step on the Groups page.',
      };
    }
    const bySight = chooseBySight(input, BY_SIGHT, picker).filter((word) => word.length > 1);
    const language = chosen('language');
    const languages =
      language === 'both'
        ? (['en', 'es'] as const)
        : language === 'es'
          ? (['es'] as const)
          : (['en'] as const);
    return { says: null, blocks: languages.flatMap((each) => sheet(input, each, words, bySight)) };
  },
};

/** Words with the pattern the sheet is about, then others of the lesson, then of earlier steps where there are too few. */
function chooseWords(input: LessonInput, picker: Picker): string[] {
  const fit = fitWords(input);
  const row = subject(input)?.row;
  const taken = row ? picker.pickEarly(wordsWith(input, row), SUBJECT_WORDS) : [];
  const ours = fit.filter(({ requires }) => requires.some((id) => input.focus.includes(id)));
  for (const words of [ours, fit]) {
    const left = oneOfFamily(words).filter(({ family }) => !taken.some((word) => word.family === family));
    taken.push(...picker.pickEarly(left, WORDS - taken.length));
  }
  return taken.map(({ word }) => word);
}

function sheet(
  input: LessonInput,
  language: 'en' | 'es',
  words: readonly string[],
  bySight: readonly string[],
): LessonBlock[] {
  const { title, about, aboutWords, read, bySight: glance, how, thanks } = homeTexts[language];
  const found = subject(input);
  const first = (found && found.letters !== '' ? about : aboutWords)
    .replace('{letters}', found?.letters ?? '')
    .replace('{word}', found?.word ?? words[0]!);
  const text = (id: string, heading: string, rows: readonly string[]): LessonBlock => ({
    id: `${language}-${id}`,
    title: heading,
    layout: 'lines',
    columns: [{ head: '', shows: 'free' }],
    rows: rows.map((row) => [row]),
  });
  const list = (id: string, heading: string, rows: readonly string[]): LessonBlock => ({
    ...text(id, heading, rows),
    layout: 'words',
    columns: [{ head: '', shows: 'both' }],
  });
  return [
    text('about', title, [first]),
    list('words', read, words),
    ...(bySight.length > 0 ? [list('by-sight', glance, bySight)] : []),
    text('how', '', [...how, thanks]),
  ];
}

/** The first pattern of the lesson that words show; of a change of spelling it has no letters. */
function subject(input: LessonInput): { row: Pattern; letters: string; word: string } | null {
  for (const id of input.focus) {
    const row = rowOf(id);
    const examples = row ? wordsWith(input, row) : [];
    if (!row || examples.length < FEWEST) continue;
    const word = examples.find((each) => each.word === row.keyWord)?.word ?? examples[0]!.word;
    const first = row.letters.split(' ')[0] ?? '';
    const letters = row.family === 'suffix' ? `-${first}` : row.family === 'prefix' ? `${first}-` : first;
    return { row, letters: letters.replace('_', '–'), word };
  }
  return null;
}
