import { rememberFor } from '../analyze/index.ts';
import lateWords from './late-words.json' with { type: 'json' };
import type { LessonInput } from './lesson-input.ts';
import { isPlain } from './plain-words.ts';
import type { WordBank } from './word-bank.ts';
import { type ListedWord, listWords } from './word-lists/listed-words.ts';

/** Words too short to show anything, or read as a letter's name. */
const SHORTEST = 2;

/** Common in films and met late by children (verdict, agenda), mostly of two and three syllables; read off the bank by hand. */
const late: ReadonlySet<string> = new Set(lateWords.words.split(' '));

/** Whether a word comes late to children: verdict. */
export function isLate(word: string): boolean {
  return late.has(word);
}

/** Whether a class of young children knows a word: plain, and none that comes late (`late-words.json`). */
export function isForClass(word: string, base: string | null, bank: WordBank): boolean {
  return isPlain(word, base, bank) && !late.has(word) && !late.has(base ?? word);
}

/**
 * The words that may be shown alone to a class: children know them (kite, not lease), they are one word with one meaning for
 * the eye (not lead), no short form, no name (not May), and the engine is sure of them. Commonest first.
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

/** Whether a word ends in several consonants only where the group has been taught such: not lens or length before bend and sink. */
export function isEndTaught({ reading, requires }: ListedWord, { known }: LessonInput): boolean {
  const own = reading.units.filter(({ affix }) => affix === undefined);
  const end = own.slice(-2).map(({ sound }) => sound);
  const isCluster = end.length === 2 && end.every((sound) => !/^[AEIOU]|^-$|\.[AEIOU]/.test(sound));
  if (!isCluster) return true;
  if (end[0] === 'NG' && end[1] !== 'K') return false;
  return requires.some((id) => id.startsWith('end-') && known.knows(id)) || end.join(' ') === 'NG K';
}
