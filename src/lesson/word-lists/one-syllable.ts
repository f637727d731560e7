import type { Reading } from '../../analyze/types.ts';
import { isVowel, listUnits } from './list-units.ts';

/** A word of one syllable cut before its vowel. */
export interface Halves {
  /** The letters before the vowel: `sh`; may be empty. */
  readonly onset: Half;
  /** The letters from the vowel on: `ip`. */
  readonly rime: Half;
}

/**
 * Part of a word, with its sounds joined by spaces and the patterns a reader needs for it. Ship needs `sh`; slip has
 * the sounds s, l and needs `start-sl`.
 */
export interface Half {
  readonly letters: string;
  readonly sound: string;
  readonly patterns: readonly string[];
}

/**
 * Cuts a word of one syllable before its vowel: ship into sh and ip. Returns null for words of more syllables, words
 * with endings, and words that cannot be cut plainly (said).
 */
export function cutInHalves(word: string, reading: Reading): Halves | null {
  const { units, syllables, affixes, requires } = reading;
  if (syllables.length !== 1 || affixes.length > 0) return null;
  const vowel = listUnits(reading).findIndex(isVowel);
  if (vowel === -1 || units.some(({ pattern }) => pattern === 'irregular')) return null;
  const before = units.slice(0, vowel);
  const letters = before.map((unit) => unit.letters).join('');
  if (!word.startsWith(letters)) return null;
  const half = (text: string, part: typeof units, blends: RegExp): Half => ({
    letters: text,
    sound: part.map(({ sound }) => sound.replaceAll('.', ' ')).join(' '),
    patterns: [...part.map(({ pattern }) => pattern), ...requires.filter((id) => blends.test(id))],
  });
  return {
    onset: half(letters, before, /^start-/),
    rime: half(word.slice(letters.length), units.slice(vowel), /^end-/),
  };
}
