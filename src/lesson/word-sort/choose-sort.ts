import { rememberFor, soundsIn } from '../../analyze/index.ts';
import type { Unit } from '../../analyze/types.ts';
import { fitWords, isEndTaught, oneOfFamily } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Picker } from '../picker.ts';
import { correspondenceOf, correspondences, heardAs } from '../review/correspondences.ts';
import type { ListedWord } from '../word-lists/listed-words.ts';

/** A column of a word sort: the words with one spelling of the sound. */
export interface SortColumn {
  readonly letters: string;
  readonly words: readonly string[];
}

/** The words with a sound, by its spellings. */
type Spellings = ReadonlyMap<string, readonly ListedWord[]>;

const FEWEST_WORDS = 3;
/** Weak or silent sounds. Words cannot be sorted by them. */
const WEAK = /^(?:AX|IX|-)|\.AX|\.IX/;
/** The number of words from the start of a spelling's list to choose from. Later words are seldom taken. */
const CHOSEN_FROM = 30;
/** If there are this many more short words than wanted, longer words are left out. */
const SPARE = 2;
/**
 * Letters that a teacher would not call a spelling of their own, such as the err of cherry. The rr of carry is a
 * spelling.
 */
const NO_SPELLING = /^[aeiou]rr$|^dg$|^xc$/;

/**
 * Returns the sounds a sort can be made of. The sounds of the lesson come first, then the sounds of the steps before,
 * the latest first. A sound comes last if its only two spellings are a letter and the same letter doubled.
 */
export function sortableSounds(input: LessonInput): string[] {
  const { known, focus, sequence, group } = input;
  const before = (sequence?.steps.slice(0, group.step) ?? []).toReversed().flatMap(({ teaches }) => teaches);
  const taught = correspondences.filter(({ id }) => known.knows(id)).map(({ id }) => id);
  const rows = [...focus, ...before, ...taught].flatMap((id) => correspondenceOf(id) ?? []);
  const sounds = [...new Set(rows.map((row) => heardAs(soundsIn(row, known.accent)[0]!)))];
  const found = soundsOf(input);
  const sortable = sounds.filter((sound) => (found.get(sound)?.size ?? 0) >= 2);
  const isDoubling = (sound: string): boolean => {
    const letters = [...found.get(sound)!.keys()];
    return letters.length === 2 && letters.some((one) => letters.includes(one + one));
  };
  return [...sortable.filter((sound) => !isDoubling(sound)), ...sortable.filter(isDoubling)];
}

/**
 * Returns all sounds with their spellings and the words that show each spelling. The words are base words that children
 * know. Each word has the sound only once, and the letters have no other sound in the word. Examples for ā are `ai`
 * rain, `ay` play and `a_e` cake, but not daybreak or they. The spelling with most words comes first.
 */
const soundsOf = rememberFor(findSounds, ({ known }) => known);

function findSounds(input: LessonInput): ReadonlyMap<string, Spellings> {
  const words = new Map<string, Map<string, ListedWord[]>>();
  for (const word of oneOfFamily(fitWords(input).filter(({ built }) => !built))) {
    if (!isEndTaught(word, input)) continue;
    const { units } = word.reading;
    if (units.some(({ pattern }) => pattern === 'irregular')) continue;
    for (const unit of units) {
      if (!isPlainly(unit, word)) continue;
      const sound = heardAs(unit.sound);
      const ofSound = words.get(sound) ?? new Map<string, ListedWord[]>();
      words.set(sound, ofSound);
      ofSound.set(unit.letters, [...(ofSound.get(unit.letters) ?? []), word]);
    }
  }
  return new Map(
    [...words].map(([sound, ofSound]): [string, Spellings] => [
      sound,
      new Map(
        [...ofSound]
          .filter(([, some]) => some.length >= FEWEST_WORDS)
          .sort(([, a], [, b]) => b.length - a.length)
          .map(([letters, some]) => [
            letters,
            some.sort((a, b) => a.syllables - b.syllables || a.order - b.order).slice(0, CHOSEN_FROM),
          ]),
      ),
    ]),
  );
}

/** Whether a unit is an e like the first e of report, which many people pronounce weakly. */
function isUnsure(unit: Unit, units: readonly Unit[]): boolean {
  const start = units.slice(0, units.indexOf(unit) + 1).map(({ letters }) => letters);
  return /^(?:re|be|de|pre|e)$/.test(start.join('')) && unit.letters === 'e' && units.length > 3;
}

/** Whether there is one consonant between the vowel and its silent e: cake, not taste. */
export function hasOneBetween(word: string, letters: string): boolean {
  return new RegExp(`${letters[0]!}[^aeiou]e$`).test(word);
}

/**
 * Whether a word shows a unit as a spelling of its sound. No other unit of the word may have that sound or those
 * letters.
 */
function isPlainly(unit: Unit, { word, reading: { units } }: ListedWord): boolean {
  const { letters, sound, pattern } = unit;
  const row = correspondenceOf(pattern);
  if (!row || row.family === 'schwa' || !isOwnSpelling(unit, units) || isSaidInTwoWays(unit, units))
    return false;
  const heard = heardAs(sound);
  const holds = (other: Unit): boolean =>
    other.sound === sound || other.sound.split('.').some((one) => heardAs(one) === heard);
  return (
    row.letters.split(' ').includes(letters) &&
    units.every((other) => other === unit || (!holds(other) && other.letters !== letters)) &&
    (letters.includes('_') ? hasOneBetween(word, letters) : word.split(letters).length === 2)
  );
}

/** Whether a unit is a whole spelling with a fully pronounced sound. Weak sounds and affixes do not count. */
function isOwnSpelling(unit: Unit, units: readonly Unit[]): boolean {
  const { letters, sound, affix, pattern } = unit;
  if (affix !== undefined || WEAK.test(sound) || NO_SPELLING.test(letters) || pattern.endsWith('-weak'))
    return false;
  const isLast = units.at(-1) === unit;
  // The e of ve and se is silent only at the end of a word (solve, but not evening). The gu at the end of vague belongs
  // to the spelling gue.
  return letters === 'gu' ? !isLast : isLast || !/^[csvz]e$/.test(letters);
}

/**
 * Whether a unit is pronounced in several ways. Many people say the o of dog as a short o. A vowel before r also varies
 * (worry).
 */
function isSaidInTwoWays(unit: Unit, units: readonly Unit[]): boolean {
  const next = units[units.indexOf(unit) + 1]?.sound ?? '';
  const isBeforeR = /^[AEIOU]/.test(unit.sound) && next.startsWith('R');
  return /^(?:o-aw|a-ah)$/.test(unit.pattern) || isBeforeR || isUnsure(unit, units);
}

/** Returns the spellings of a sound in a sort. */
export function lettersOf(input: LessonInput, sound: string): string[] {
  return [...(soundsOf(input).get(sound)?.keys() ?? [])];
}

/**
 * Keeps only words that fit under no other column. For example, author is removed from the column au if there is a
 * column or.
 */
function withoutOthers(
  columns: readonly (readonly [string, readonly ListedWord[]])[],
): (readonly [string, readonly ListedWord[]])[] {
  return columns.map(([letters, words]) => {
    const others = columns.map(([other]) => other).filter((other) => other !== letters);
    return [
      letters,
      words.filter(({ word }) => !others.some((other) => isAlsoIn(word, letters, other))),
    ] as const;
  });
}

/**
 * Whether a word also contains the letters of another column. For example, author also contains or, and back contains
 * ck beside c.
 */
function isAlsoIn(word: string, letters: string, other: string): boolean {
  const spelt = (some: string): RegExp => new RegExp(some.replace('_', '([^aeiou])'));
  const rest = other.includes(letters)
    ? word
    : word.replace(spelt(letters), letters.includes('_') ? ' $1 ' : ' ');
  return spelt(other).test(rest);
}

/** Chooses up to `most` spellings as columns, the lesson's spellings first. Returns null if there are fewer than two. */
export function chooseSort(
  input: LessonInput,
  sound: string,
  most: number,
  count: number,
  picker: Picker,
): SortColumn[] | null {
  const all = [...(soundsOf(input).get(sound) ?? [])];
  const ours = new Set(input.focus.flatMap((id) => correspondenceOf(id)?.letters.split(' ') ?? []));
  let columns: (readonly [string, readonly ListedWord[]])[] = [];
  for (const column of [
    ...all.filter(([letters]) => ours.has(letters)),
    ...all.filter(([letters]) => !ours.has(letters)),
  ]) {
    if (columns.length >= most) break;
    // A spelling gets no column if it would leave too few words in any column.
    const next = withoutOthers([...columns, column]);
    if (next.every(([, words]) => words.length >= FEWEST_WORDS)) columns = next;
  }
  if (columns.length < 2) return null;
  const each = Math.max(FEWEST_WORDS, Math.round(count / columns.length));
  return columns.map(([letters, fit]) => {
    // Words of many syllables are used only if there are too few shorter words.
    const [short, middling] = [1, 2].map((most) => fit.filter(({ syllables }) => syllables <= most));
    const words = short!.length >= each + SPARE ? short! : middling!.length >= FEWEST_WORDS ? middling! : fit;
    return { letters, words: picker.shuffle(picker.pickEarly(words, each)).map(({ word }) => word) };
  });
}
