import { catalogue, soundsIn } from '../../analyze/index.ts';
import type { Pattern, PatternId, SyllableType, Unit } from '../../analyze/types.ts';
import { markWord } from '../../marks/mark-word.ts';
import { fitWords, isEndTaught, oneOfFamily } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Picker } from '../picker.ts';
import { correspondenceOf, heardAs } from '../review/correspondences.ts';
import { areTypesTaught, isPlainlyMarked } from '../syllable-division/choose-words.ts';
import { asHeard } from '../word-lists/as-heard.ts';
import type { ListedWord } from '../word-lists/listed-words.ts';
import { hasOneBetween } from '../word-sort/choose-sort.ts';
import { isMeaningTrueOf, isRuleTrueOf } from './say-rule.ts';

/** Words to sort: words that have a pattern and words that do not. */
export interface WordsToSort {
  readonly has: readonly string[];
  readonly hasNot: readonly string[];
}

/** The fewest words on each side of a sort. */
const FEWEST = 3;
/**
 * The largest share of the words without the pattern that may have the same letters for another sound (cat beside
 * city), and the largest share that may have the sound in other letters.
 */
const SAME_LETTERS = 0.4;
const SAME_SOUND = 1 / 3;
const TYPES: Readonly<Record<string, SyllableType>> = {
  'type-closed': 'closed',
  'type-open': 'open',
  'type-vce': 'vce',
  'type-team': 'team',
  'type-r': 'r-controlled',
};
/** Sounds that are pronounced weakly. Such a sound does not count when words are compared by ear. */
const WEAK = /^(?:AX|IX|-)/;
/** Patterns that are a vowel before r. */
const BEFORE_R = /^(?:a-air|u-oor)$/;
const patterns = new Map(catalogue.map((pattern) => [pattern.id, pattern]));

/** Returns the row of a pattern; undefined where this version does not know the pattern. */
export function rowOf(id: PatternId): Pattern | undefined {
  return patterns.get(id);
}

/** How words show the catalogue rows of one kind. */
interface Showing {
  readonly isFor: (row: Pattern) => boolean;
  /** Whether a word clearly shows the row. */
  readonly shows: (row: Pattern, input: LessonInput) => (word: ListedWord) => boolean;
}

const showsWhole: Showing['shows'] =
  ({ id }) =>
  (word) =>
    !word.built && word.requires.includes(id);

/** The first entry whose `isFor` accepts a row is used. */
const SHOWINGS: readonly Showing[] = [
  {
    isFor: ({ id }) => TYPES[id] !== undefined,
    shows:
      ({ id }, input) =>
      (word) =>
        showsType(word, TYPES[id]!, input),
  },
  { isFor: ({ family }) => family === 'syllable count', shows: showsWhole },
  {
    isFor: ({ id, family }) =>
      correspondenceOf(id) !== undefined || family === 'final syllable' || family === 'rime',
    shows(row) {
      const letters = new Set(row.letters.split(' '));
      return (word) =>
        !word.built && hasPlainly(word.reading.units, row.id, letters, word.word) && isRuleTrueOf(row, word);
    },
  },
  {
    // An ending or a beginning is shown by a base with that affix alone: jumping, not unpacking.
    isFor: ({ family }) => family === 'suffix' || family === 'prefix',
    shows:
      ({ id }, input) =>
      (word) =>
        hasInMeaning(word, id, input) && word.reading.affixes.length === 1 && !isOfGrammar(word, input),
  },
  { isFor: ({ family }) => family.endsWith(' blend'), shows: showsWhole },
  {
    isFor: () => true,
    shows:
      ({ id }, input) =>
      (word) =>
        hasInMeaning(word, id, input),
  },
];

/**
 * Returns words that clearly show the pattern, short and common words first: rain for ai (not said or mountain),
 * jumping for -ing.
 */
export function wordsWith(input: LessonInput, row: Pattern): ListedWord[] {
  const fit = fitWords(input).filter(SHOWINGS.find(({ isFor }) => isFor(row))!.shows(row, input));
  const isOfSyllables = row.family === 'syllable count' || TYPES[row.id] !== undefined;
  const taught = oneOfFamily(isOfSyllables ? fit.filter((word) => areTypesTaught(word, input)) : fit);
  const words = taught.length >= FEWEST ? taught : oneOfFamily(fit);
  return words.sort((a, b) => a.syllables - b.syllables || a.order - b.order);
}

/** Whether a word requires a pattern and has the meaning that its rule gives: underwater for under-, not understand. */
function hasInMeaning(word: ListedWord, id: PatternId, { bank }: LessonInput): boolean {
  return (
    word.requires.includes(id) && isMeaningTrueOf(id, { word: word.word, base: word.reading.base }, bank)
  );
}

/**
 * Returns whether a base word of two syllables has a syllable of a type, with its vowel pronounced as the type is
 * taught: robot for open syllables, not happy.
 */
function showsType(word: ListedWord, type: SyllableType, input: LessonInput): boolean {
  const { syllables } = word.reading;
  if (word.built || syllables.length !== 2 || !isPlainlyMarked(word, input)) return false;
  const marked = markWord(word.word, word.reading)
    .map(({ text }) => text.normalize('NFD'))
    .join('')
    .split('·');
  const mark = type === 'open' ? '\u0304' : type === 'closed' ? '\u0306' : '';
  const own = syllables.flatMap((one, i) => (one.type === type ? [marked[i]!] : []));
  return (
    own.length > 0 &&
    (type === 'closed' ? own.some((one) => one.includes(mark)) : own.every((one) => one.includes(mark)))
  );
}

/**
 * Returns whether the letters have this sound wherever the word has them. A word that has ea with two sounds does not
 * show ea.
 */
function hasPlainly(
  units: readonly Unit[],
  id: PatternId,
  letters: ReadonlySet<string>,
  word: string,
): boolean {
  const own = units.filter((unit) => unit.pattern === id);
  if (own.length === 0 || units.some((unit) => unit.pattern === 'irregular')) return false;
  // A vowel before r is pronounced in several ways: the e of merry.
  const isBeforeR = ({ sound }: Unit): boolean =>
    /^[AEIOU][A-Z]$/.test(sound) &&
    (units[units.findIndex((unit) => unit.sound === sound) + 1]?.sound ?? '').startsWith('R');
  if (own.some(isBeforeR) && !BEFORE_R.test(id)) return false;
  const same = units.filter((unit) => letters.has(unit.letters));
  const times = (text: string): number => word.split(text).length - 1;
  return (
    same.every((unit) => unit.pattern === id) &&
    // The letters must not be split over two units, as the ai of archaic is.
    own.every((unit) =>
      unit.letters.includes('_') ? hasOneBetween(word, unit.letters) : times(unit.letters) === own.length,
    )
  );
}

/** Chooses words with and without the pattern, mixed in length. Returns null where there are too few words of one kind. */
export function chooseWordsToSort(
  input: LessonInput,
  row: Pattern,
  count: number,
  picker: Picker,
): WordsToSort | null {
  const all = wordsWith(input, row);
  const short = all.filter(({ syllables }) => syllables <= Math.max(all[0]?.syllables ?? 1, 1));
  const from = short.length >= count ? short : all;
  const has = picker.pickEarly(from, Math.ceil(count / 2));
  if (has.length < FEWEST) return null;
  const hasNot = wordsWithout(input, row, has, Math.min(Math.floor(count / 2), has.length), picker);
  if (hasNot.length < FEWEST) return null;
  return { has: has.map(({ word }) => word), hasNot: hasNot.map(({ word }) => word) };
}

function wordsWithout(
  input: LessonInput,
  row: Pattern,
  has: readonly ListedWord[],
  count: number,
  picker: Picker,
): ListedWord[] {
  const { id, family } = row;
  const spellings = row.letters.split(' ').filter(Boolean);
  const longest = Math.max(...has.map(({ syllables }) => syllables));
  const units = has.map((word) => word.units.length);
  const [fewest, most] = [Math.min(...units) - 1, Math.max(...units) + 1];
  const isOfSize = (word: ListedWord): boolean => word.units.length >= fewest && word.units.length <= most;
  const families = new Set(has.map((word) => word.family));
  const isBuilt = family === 'suffix' || family === 'prefix' || family === 'spelling change';
  const type = TYPES[id];
  const endings = new Set(has.flatMap(({ reading }) => reading.affixes.map(({ text }) => text)));
  // The word not is left out beside knot, because words that sound the same are told apart by their meaning.
  const heard = new Set([...has, ...wordsWith(input, row)].map(({ pronunciation }) => pronunciation));
  const without = fitWords(input).filter((word) => {
    if (word.requires.includes(id) || families.has(word.family) || heard.has(word.pronunciation))
      return false;
    if (isOfGrammar(word, input) || !isEndTaught(word, input)) return false;
    if (type) return hasOtherTypes(word, type, input);
    if (family === 'syllable count') return !word.built && word.syllables < longest;
    if (word.syllables > longest) return false;
    if (family === 'spelling change') return keepsBase(word, endings);
    return (isBuilt || !word.built) && isOfSize(word) && !isTooNear(word, row, input);
  });
  const single = oneOfFamily(without);
  const spelt = (word: ListedWord): boolean => spellings.some((one) => hasLetters(word.word, one));
  const sounds = new Set(soundsIn(row, input.known.accent).map(soundOf));
  const isSpelling = correspondenceOf(id) !== undefined;
  const traps = isSpelling
    ? single.filter((word) =>
        word.reading.units.some(
          (unit) =>
            !WEAK.test(unit.sound) &&
            (spellings.includes(unit.letters)
              ? !sounds.has(soundOf(unit.sound))
              : sounds.has(soundOf(unit.sound))),
        ),
      )
    : [];
  const isFair = (word: ListedWord): boolean =>
    word.reading.units.every(
      ({ letters, sound }) =>
        !spellings.includes(letters) || (isSpelling && !WEAK.test(sound) && !sounds.has(soundOf(sound))),
    );
  const fair = traps.filter((word) => isFair(word) && !isSplit(word, spellings));
  const sameLetters = fair.filter(({ reading }) =>
    reading.units.some(({ letters }) => spellings.includes(letters)),
  );
  const chosen = picker.pickEarly(sameLetters, Math.floor(count * SAME_LETTERS));
  const isNear = isLikeAtPlace(row, has);
  const sameSound = fair.filter((word) => !sameLetters.includes(word) && (!isConsonant(row) || isNear(word)));
  chosen.push(...picker.pickEarly(sameSound, Math.max(0, Math.round(count * SAME_SOUND) - chosen.length)));
  const used = new Set(chosen.map((word) => word.family));
  const plain = single.filter(
    (word) =>
      !used.has(word.family) && (isSpelling || isBuilt || family === 'final syllable' ? !spelt(word) : true),
  );
  // Words of about the same length that have a letter of the spelling at its place look like the words with the
  // pattern. Only the pattern tells the two apart.
  const isEnding = family === 'suffix' || family === 'prefix';
  // The -ing of king is no ending.
  const looksIt = isEnding
    ? picker.pickEarly(
        single.filter(
          ({ word, built, syllables }) =>
            !built &&
            syllables === 1 &&
            spellings.some(
              (one) => one.length > 1 && (family === 'suffix' ? word.endsWith(one) : word.startsWith(one)),
            ),
        ),
        Math.floor(count * SAME_LETTERS),
      )
    : [];
  chosen.push(...looksIt);
  for (const word of looksIt) used.add(word.family);
  const built = isEnding
    ? picker.pickEarly(
        plain.filter(({ reading }) => reading.affixes.some(({ kind }) => kind === family)),
        Math.floor((count - chosen.length) / 2),
      )
    : [];
  chosen.push(...built);
  for (const word of built) used.add(word.family);
  const isAlike = (word: ListedWord): boolean =>
    !used.has(word.family) &&
    word.word.length > 2 &&
    longs.has(word.syllables) &&
    units.includes(word.units.length);
  const longs = new Set(has.map(({ syllables }) => syllables));
  const fitness = ({ word, syllables }: ListedWord): number =>
    Number(longs.has(syllables)) + Number(word.length > 2);
  const allAlike = plain.filter(isAlike);
  const near = isEnding ? [] : picker.pickEarly(allAlike.filter(isNear), Math.max(0, count - chosen.length));
  chosen.push(...near);
  for (const word of near) used.add(word.family);
  const alike = allAlike.filter(isAlike);
  const others = plain
    .filter((word) => !isAlike(word) && !used.has(word.family))
    .sort((a, b) => fitness(b) - fitness(a));
  const first = picker.pickEarly(alike, count - chosen.length);
  return picker.shuffle([
    ...chosen,
    ...first,
    ...picker.pickEarly(others, count - chosen.length - first.length),
  ]);
}

/** Whether a base word has two syllables, neither of a type: rabbit for open syllables, beside robot. */
function hasOtherTypes(word: ListedWord, type: SyllableType, input: LessonInput): boolean {
  if (word.built || word.syllables !== 2) return false;
  return word.reading.syllables.every((one) => one.type !== type) && isPlainlyMarked(word, input);
}

/**
 * Whether a word is a base with one of the given endings, and the spelling of the base does not change: jumping, not
 * hopping.
 */
function keepsBase({ reading: { affixes } }: ListedWord, endings: ReadonlySet<string>): boolean {
  return affixes.length === 1 && affixes.every(({ change, text }) => change === 'none' && endings.has(text));
}

/** Whether a word is one that nobody sorts: the, with and similar words, and forms of the shortest verbs (going, being). */
function isOfGrammar({ word, built, family }: ListedWord, { bank }: LessonInput): boolean {
  return built ? family.length < 3 : (bank.find(word)?.parts ?? '') === '';
}

function isConsonant({ letters }: Pattern): boolean {
  return letters !== '' && !/[aeiouy]/.test(letters);
}

/**
 * Returns a test for words that have a letter of a spelling at the place where other words have the whole spelling:
 * - for kn in knot, at the start: `keep` and `nest`
 * - for mb in lamb, at the end: `club`
 * - for ai in rain, anywhere: `sit`
 */
function isLikeAtPlace(
  { id, letters, family }: Pattern,
  has: readonly ListedWord[],
): (word: ListedWord) => boolean {
  const own = new Set(letters.replaceAll(/[^a-z]/g, ''));
  const isAt = (at: number): boolean => has.every(({ reading }) => reading.units.at(at)?.pattern === id);
  const isStart = family === 'initial blend' || isAt(0);
  const isEnd = family === 'final blend' || isAt(-1);
  if (!isConsonant({ letters } as Pattern)) return ({ word }) => [...word].some((one) => own.has(one));
  if (isStart) return ({ word }) => own.has(word[0]!);
  if (isEnd) return ({ word }) => own.has(word.replace(/e$/, '').at(-1)!);
  return ({ word }) => [...word].some((one) => own.has(one));
}

/** Returns the sound by which words are sorted. In a sort by ew, the yoo of few and the oo of flew are one sound. */
function soundOf(sound: string): string {
  return asHeard(heardAs(sound)).replace(/^Y\.UW/, 'UW');
}

/** Whether a spelling's letters belong to two units of a word: the ai of archaic. */
function isSplit(word: ListedWord, spellings: readonly string[]): boolean {
  return spellings.some(
    (one) =>
      one.length > 1 &&
      hasLetters(word.word, one) &&
      !word.reading.units.some(({ letters }) => letters === one),
  );
}

function hasLetters(word: string, letters: string): boolean {
  const at = letters.indexOf('_');
  return at === -1 ? word.includes(letters) : new RegExp(`${letters.slice(0, at)}[^aeiou]e`).test(word);
}

/**
 * Whether a word without a pattern is too similar to words with it. To many people short o and the o of dog are one
 * sound, and so are o and au. The letters of a blend may be apart in a word.
 */
function isTooNear({ reading }: ListedWord, { id, family }: Pattern, { known }: LessonInput): boolean {
  const near = NEAR.find((some) => some.includes(id)) ?? [];
  if (reading.units.some(({ pattern }) => near.includes(pattern))) return true;
  // The base under an ending that is not taught as one tells nothing.
  return (
    family === 'suffix' && reading.affixes.some(({ kind }) => kind !== 'suffix') && !known.knows('compound')
  );
}

const NEAR: readonly (readonly PatternId[])[] = [
  ['short-o', 'o-aw', 'a-ah', 'al-ah', 'a-after-w'],
  ['ar-weak', 'or-weak', 'er'],
  ['suffix-ed-t', 'suffix-ed-d', 'suffix-ed-id'],
  ['suffix-s', 'suffix-es', 'suffix-s-s', 'suffix-s-z', 'suffix-es-iz', 'suffix-es-z'],
];
