import type { Unit } from '../../analyze/types.ts';
import { fitWords, oneOfFamily } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, LessonPart, PartMaker } from '../lesson-part.ts';
import { rowOf } from '../new-pattern/choose-words.ts';
import type { Picker } from '../picker.ts';
import { chooseReview } from '../review/choose-review.ts';
import { correspondenceOf } from '../review/correspondences.ts';
import { daysSinceTaught } from '../review/days-since-taught.ts';
import { wordsOnSheet } from '../spaced-review/words-on-sheet.ts';
import { isDivisible } from '../syllable-division/choose-words.ts';
import type { ListedWord } from '../word-lists/listed-words.ts';
import { isPractised, stepsBefore, takeInTurn } from '../words-of-patterns.ts';

const SIZES = ['6', '12'] as const;
/** The number of earlier steps whose words are used where the lesson has too few words. */
const STEPS_BACK = 8;
/** The most cards out of twelve that show the new letters. The other cards make words with these letters. */
const OWN_IN_TWELVE = 7;
/** The fewest words for cards with syllables. */
const FEWEST_DIVIDED = 2;
/** With fewer base words than this, words with endings and words made of two words are divided too. */
const ENOUGH_BARE = 4;
/** Rows whose letters are not used for cards. */
const NO_LETTERS = /^(?:syllable|spelling change|contraction|possessive|compound|root|rime)/;
/** The row left out because its cards mislead: the sw of sword would be read like the sw of swim. */
const MISLEADS = 'w-silent';
/** Rows that are shown by whole words, not by letters: sunset, can't, Bram's. */
const WHOLE_WORDS = /^(?:compound|contraction|possessive)/;
/** The fewest words of the lesson that the letters must make. With fewer, the cards show words. */
const FEWEST_MADE = 4;

/** Cards to cut out with letters, words or syllables of the lesson: six or twelve fill a page. */
export const cards: PartMaker = {
  id: 'cards',
  title: 'Cards to cut out',
  extra: true,
  fromSheet: true,
  use: 'Print letters, words or syllables of the lesson as cards to sort, match or build with.',
  choices: () => [
    {
      id: 'of',
      label: 'Cards with',
      options: [
        { value: 'words', label: 'words' },
        { value: 'letters', label: 'letters' },
        { value: 'syllables', label: 'syllables' },
      ],
      usual: 'words',
    },
    {
      id: 'size',
      label: 'Cards on a page',
      options: SIZES.map((value) => ({ value, label: value })),
      usual: '12',
    },
    {
      id: 'pages',
      label: 'Pages',
      options: ['1', '2'].map((value) => ({ value, label: value })),
      usual: '1',
    },
  ],
  make(input, chosen, picker, sheet = []) {
    const size = chosen('size') === '6' ? 6 : 12;
    const count = size * (chosen('pages') === '2' ? 2 : 1);
    const asked = chosen('of');
    const letters = asked === 'letters' ? lettersOf(input, count, picker) : [];
    const words =
      asked === 'syllables' || isEnough(input, letters) ? [] : wordsOf(input, sheet, count, picker);
    // Where letters make too few words, the cards have words instead, unless there are no words either.
    const of = asked === 'letters' && words.length > 0 ? 'words' : asked;
    const divided = of === 'syllables' ? syllablesOf(input, sheet, count, picker) : null;
    const texts = divided?.texts ?? (of === 'letters' ? letters : words);
    if (texts.length === 0) {
      return {
        blocks: [],
        says:
          of === 'syllables'
            ? 'Too few words of two syllables have the patterns of this step. Choose letters or words for the cards.'
            : 'There is nothing for cards yet. Choose the group’s step on the Groups page.',
      };
    }
    return {
      says: null,
      blocks: [
        {
          ...cardsBlock(texts, size, of),
          ...(divided && { note: `The cards make these words: ${divided.words.join(', ')}.` }),
        },
      ],
    };
  },
};

function cardsBlock(texts: readonly string[], size: 6 | 12, of: string): LessonBlock {
  return {
    id: 'cards',
    title: '',
    layout: size === 6 ? 'cards-6' : 'cards-12',
    // Letters or a syllable on a card are not a word to read alone.
    columns: [{ head: of === 'letters' ? 'Letters' : '', shows: of === 'syllables' ? 'free' : 'both' }],
    rows: texts.map((text) => [text]),
  };
}

/** Returns letters of the lesson and letters that make words with them: for ai and ay also r, n, p, l. */
function lettersOf(input: LessonInput, count: number, picker: Picker): string[] {
  const { focus, known } = input;
  const rows = picker.shuffle(focus.filter(isPractised).flatMap((id) => rowOf(id) ?? []));
  const own = rows.flatMap(({ id, family, letters }) => {
    const first = letters.split(' ')[0] ?? '';
    if (first === '' || NO_LETTERS.test(family) || id === MISLEADS) return [];
    return [family === 'suffix' ? `-${first}` : family === 'prefix' ? `${first}-` : first];
  });
  const texts = new Set(own.slice(0, Math.ceil((count * OWN_IN_TWELVE) / 12)));
  const isCard = ({ pattern, letters, affix }: Unit): boolean =>
    affix === undefined &&
    pattern !== MISLEADS &&
    correspondenceOf(pattern) !== undefined &&
    known.knows(pattern) &&
    rowOf(pattern)!.letters.split(' ').includes(letters);
  for (const { reading } of takeInTurn(input, focus, count, picker, {
    isFit: ({ syllables }) => syllables < 3,
  })) {
    const letters = [
      ...reading.units.filter((unit) => isCard(unit)).map((unit) => unit.letters),
      // For hoping the cards are h, o_e, p and -ing.
      ...reading.affixes.filter(({ kind }) => kind === 'suffix').map(({ text }) => `-${text}`),
    ];
    // A word is left out if there is no room for all its letters.
    if (new Set([...texts, ...letters]).size <= count) for (const one of letters) texts.add(one);
  }
  const taught = daysSinceTaught(input.group, input.sequence, input.day);
  const more = chooseReview(input, taught, count * 2, picker).map(({ letters }) => letters.split(' ')[0]!);
  const usual = picker.shuffle(
    [...'aeioumstnprld'].filter((one) => known.knows(/[aeiou]/.test(one) ? `short-${one}` : one)),
  );
  return [...new Set([...texts, ...usual, ...more])].slice(0, count);
}

/** Returns whether letters make enough words of the lesson that children know: oa, b, t, g and l make boat, goat … */
function isEnough(input: LessonInput, texts: readonly string[]): boolean {
  if (texts.length === 0 || input.focus.some((id) => WHOLE_WORDS.test(id))) return false;
  let made = 0;
  for (const { requires, reading } of fitWords(input)) {
    if (!input.focus.some((id) => requires.includes(id))) continue;
    const spelt = [
      ...reading.affixes.filter(({ kind }) => kind === 'prefix').map(({ text }) => `${text}-`),
      ...reading.units.filter(({ affix }) => affix === undefined).map(({ letters }) => letters),
      ...reading.affixes.filter(({ kind }) => kind === 'suffix').map(({ text }) => `-${text}`),
    ];
    if (isMade(spelt.join(''), texts) && ++made >= FEWEST_MADE) return true;
  }
  return false;
}

/** Returns whether the cards, each used at most once, spell a word: str, i and ng spell string. */
function isMade(word: string, texts: readonly string[]): boolean {
  return (
    word === '' ||
    texts.some((text, i) => word.startsWith(text) && isMade(word.slice(text.length), texts.toSpliced(i, 1)))
  );
}

/**
 * Returns words with the patterns of the lesson in turn. Words on the sheet come first. If there are too few, words of
 * the latest steps are added.
 */
function wordsOf(input: LessonInput, sheet: readonly LessonPart[], count: number, picker: Picker): string[] {
  const onSheet = new Set(wordsOnSheet(sheet));
  const taken: ListedWord[] = [];
  for (const patterns of [input.focus, ...stepsBefore(input, STEPS_BACK)]) {
    const isFit = ({ family }: ListedWord): boolean => !taken.some((word) => word.family === family);
    const isFirst = ({ word }: ListedWord): boolean => onSheet.has(word);
    taken.push(...takeInTurn(input, patterns, count - taken.length, picker, { isFirst, isFit }));
    if (taken.length >= count) break;
  }
  return taken.map(({ word }) => word);
}

/**
 * Returns the syllables of words in pairs, so that the cards make the words again. Returns fewer cards than there is
 * room for, rather than words of other lessons.
 */
function syllablesOf(
  input: LessonInput,
  sheet: readonly LessonPart[],
  count: number,
  picker: Picker,
): { texts: string[]; words: string[] } {
  const onSheet = new Set(wordsOnSheet(sheet));
  const isFirst = ({ word }: ListedWord): boolean => onSheet.has(word);
  const divisible = fitWords(input).filter(isDivisible);
  const take = (mayBeBuilt: boolean): ListedWord[] =>
    takeInTurn(input, input.focus, count, picker, {
      isFirst,
      wordsOf: (id) =>
        oneOfFamily(divisible.filter((word) => word.requires.includes(id) && (mayBeBuilt || !word.built))),
    });
  const bare = take(false);
  const texts: string[] = [];
  const words: string[] = [];
  const parts = ({ reading }: ListedWord): string[] => reading.syllables.map(({ text }) => text);
  for (const word of bare.length >= ENOUGH_BARE ? bare : take(true)) {
    const own = parts(word);
    // A longer syllable of the lesson (tion) may be on several cards if several words need it.
    const isThere = own.some((part) => part.length < 3 && texts.includes(part));
    // A card with a single letter, such as a, does not show how the letter sounds.
    const isClear = own.every((part) => part.length > 1);
    if (texts.length + own.length <= count && !isThere && isClear) {
      texts.push(...own);
      words.push(word.word);
    }
  }
  return texts.length >= 2 * FEWEST_DIVIDED ? { texts, words } : { texts: [], words };
}
