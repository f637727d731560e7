import { rememberFor } from '../analyze/index.ts';
import lateWords from './late-words.json' with { type: 'json' };
import type { LessonInput } from './lesson-input.ts';
import { isPlain } from './plain-words.ts';
import type { WordBank } from './word-bank.ts';
import { type ListedWord, listWords } from './word-lists/listed-words.ts';

/** The length of the shortest word. Shorter words show nothing, or are read as a letter's name. */
const SHORTEST = 2;

/**
 * Words that are common in films and that children meet late (verdict, agenda), mostly of two and three syllables.
 * Chosen from the bank by hand.
 */
const late: ReadonlySet<string> = new Set(lateWords.words.split(' '));

/** Whether children meet a word late: verdict. */
export function isLate(word: string): boolean {
  return late.has(word);
}

/** Whether a class of young children knows a word. Such a word is plain and not met late (`late-words.json`). */
export function isForClass(word: string, base: string | null, bank: WordBank): boolean {
  return isPlain(word, base, bank) && !late.has(word) && !late.has(base ?? word);
}

/**
 * Returns the words that may be shown alone to a class, commonest first:
 * - Children know the word (kite, not lease).
 * - Its letters are one word with one meaning (not lead), no short form and no name (not May).
 * - The engine is sure of the word.
 */
export const fitWords = rememberFor(
  (input: LessonInput): readonly ListedWord[] =>
    listWords(input).filter(
      ({ word, family, reading }) =>
        isForClass(word, family, input.bank) &&
        word.length >= SHORTEST &&
        /^[a-z]+$/.test(word) &&
        (reading.source === 'dictionary' || reading.source === 'derived'),
    ),
  ({ known }) => known,
);

/** One word of each family: not both sail and sails. */
export function oneOfFamily(words: readonly ListedWord[]): ListedWord[] {
  const families = new Set<string>();
  return words.filter(({ family }) => !families.has(family) && families.add(family));
}

/**
 * Whether the group has been taught the consonants at the end of a word, if the word ends in several: bend and sink,
 * but not lens or length.
 */
export function isEndTaught({ reading, requires }: ListedWord, { known }: LessonInput): boolean {
  const own = reading.units.filter(({ affix }) => affix === undefined);
  const end = own.slice(-2).map(({ sound }) => sound);
  const isCluster = end.length === 2 && end.every((sound) => !/^[AEIOU]|^-$|\.[AEIOU]/.test(sound));
  if (!isCluster) return true;
  if (end[0] === 'NG' && end[1] !== 'K') return false;
  return requires.some((id) => id.startsWith('end-') && known.knows(id)) || end.join(' ') === 'NG K';
}
