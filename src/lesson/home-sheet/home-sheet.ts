import { patternLabel } from '../../marks/pattern-label.ts';
import { chooseBySight } from '../dictation/choose-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { rowOf } from '../new-pattern/choose-words.ts';
import type { Picker } from '../picker.ts';
import { isOnSyllables } from '../syllable-division/choose-words.ts';
import type { ListedWord } from '../word-lists/listed-words.ts';
import { isPractised, stepsBefore, takeInTurn, wordsOfPattern } from '../words-of-patterns.ts';
import { homeTexts } from './home-texts.ts';

const WORDS = 8;
/** The number of earlier steps whose words are used where the step has too few words. */
const STEPS_BACK = 8;
/** Rows whose letters are not named as a spelling. */
const NO_LETTERS = /^(?:syllable|rime|spelling change|contraction|possessive|compound|root)/;
/** The most spellings that are named. These are the commonest. */
const MOST_NAMED = 5;
/** Contractions and possessives. They show no other pattern, and no other word shows them. */
const APOSTROPHE = /^(?:contraction|possessive)/;
/** The label that teachers use for silent letters: silent w as in sword. */
const SILENT = /^silent (\w+)/;
const BY_SIGHT = 4;
/** The fewest words that make a practice. */
const FEWEST = 3;

/** Half a page for whoever reads with the child at home: the new spelling, words to read, how to help. */
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
    const bySight = chooseBySight(input, 3 * BY_SIGHT, picker)
      .filter((word) => word.length > 1 && !isSoundedOut(input, word))
      .slice(0, BY_SIGHT);
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

/** Whether a by-sight word can be read by now with a pattern of the step: eat where ea is learnt. */
function isSoundedOut({ analyzer, focus, known }: LessonInput, word: string): boolean {
  const { requires, units } = analyzer.analyze(word.toLowerCase()).readings[0]!;
  return (
    requires.every((id) => known.knows(id)) &&
    units.every(({ pattern }) => pattern !== 'irregular') &&
    focus.some((id) => requires.includes(id))
  );
}

/** Chooses words with the patterns of the sheet in turn, then words of earlier steps where there are too few. */
function chooseWords(input: LessonInput, picker: Picker): string[] {
  const { focus } = input;
  const taken: ListedWord[] = [];
  const isApostrophe = focus.length > 0 && focus.every((id) => APOSTROPHE.test(id));
  const before = isApostrophe ? [] : stepsBefore(input, STEPS_BACK);
  for (const patterns of [focus, ...before.map((ids) => ids.filter((id) => !APOSTROPHE.test(id)))]) {
    const isFit = ({ family }: ListedWord): boolean => !taken.some((one) => one.family === family);
    taken.push(...takeInTurn(input, patterns, WORDS - taken.length, picker, { isFit }));
    if (taken.length >= WORDS) break;
  }
  return taken.map(({ word }) => word);
}

function sheet(
  input: LessonInput,
  language: 'en' | 'es',
  words: readonly string[],
  bySight: readonly string[],
): LessonBlock[] {
  const {
    title,
    about,
    aboutSeveral,
    aboutMany,
    aboutWords,
    aboutLonger,
    apostrophe,
    spelling,
    silent,
    and,
    read,
    bySight: glance,
    how,
    thanks,
  } = homeTexts[language];
  const all = subjects(input);
  const named = [...all].sort((a, b) => b.count - a.count).slice(0, MOST_NAMED);
  const found = all
    .filter((one) => named.includes(one))
    .map(({ letters, isSilent, words }) =>
      (isSilent ? silent : spelling).replace('{letters}', letters).replace('{word}', list(words, ` ${and} `)),
    );
  const spellings = list(found, `, ${and} `);
  const first = (
    found.length === 0
      ? isOnSyllables(input)
        ? aboutLonger
        : aboutWords
      : all.length > found.length
        ? aboutMany
        : found.length === 1
          ? about
          : aboutSeveral
  )
    .replace('{spellings}', spellings)
    .replace('{word}', words[0]!);
  const withApostrophe = input.focus.some((id) => APOSTROPHE.test(id))
    ? words.find((word) => word.includes("'"))
    : undefined;
  const more =
    withApostrophe === undefined || found.length === 0
      ? ''
      : ` ${apostrophe.replace('{word}', withApostrophe)}`;
  const text = (id: string, heading: string, rows: readonly string[]): LessonBlock => ({
    id: `${language}-${id}`,
    title: heading,
    layout: 'lines',
    columns: [{ head: '', shows: 'free' }],
    rows: rows.map((row) => [row]),
  });
  const wordList = (id: string, heading: string, rows: readonly string[]): LessonBlock => ({
    ...text(id, heading, rows),
    layout: 'words',
    columns: [{ head: '', shows: 'both' }],
  });
  return [
    text('about', title, [first + more]),
    wordList('words', read, words),
    ...(bySight.length > 0 ? [wordList('by-sight', glance, bySight)] : []),
    text('how', '', [...how, thanks]),
  ];
}

interface Subject {
  readonly letters: string;
  /** Whether the letter is silent and named alone: the w of sword. */
  readonly isSilent: boolean;
  readonly words: readonly string[];
  /** The number of words with these letters. */
  readonly count: number;
}

/**
 * Returns the letters that the step teaches, in its order. Each entry has a word for each sound of the letters and the
 * number of words with the letters. Changes of spelling are left out, because they have no letters.
 */
function subjects(input: LessonInput): Subject[] {
  const silent = new Set<string>();
  const found = new Map<string, string[]>();
  const counts = new Map<string, number>();
  for (const id of input.focus.filter(isPractised)) {
    const row = rowOf(id);
    const first = row?.letters.split(' ')[0] ?? '';
    if (!row || first === '' || NO_LETTERS.test(row.family)) continue;
    const taken = [...found.values()].flat();
    const examples = wordsOfPattern(input, id).filter(({ word }) => !taken.includes(word));
    const key = row.keyWord !== '' && input.known.reads(row.keyWord) ? row.keyWord : undefined;
    const word = key ?? examples[0]?.word;
    if (word === undefined) continue;
    const unsaid = SILENT.exec(patternLabel(id))?.[1];
    const spelt = row.family === 'suffix' ? `-${first}` : row.family === 'prefix' ? `${first}-` : first;
    const letters = unsaid ?? spelt.replace('_', '–');
    if (unsaid !== undefined) silent.add(letters);
    found.set(letters, [...(found.get(letters) ?? []), word]);
    counts.set(letters, (counts.get(letters) ?? 0) + examples.length);
  }
  return [...found].map(([letters, words]) => ({
    letters,
    isSilent: silent.has(letters),
    words,
    count: counts.get(letters)!,
  }));
}

/** Returns a list such as `a, b and c`, with ` and ` or `, and ` before the last item. */
function list(items: readonly string[], and: string): string {
  return items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')}${and}${items.at(-1)}`;
}
