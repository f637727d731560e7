import type { Reading } from '../../analyze/types.ts';
import { isVowel, listUnits } from './list-units.ts';

/** A word of one syllable cut before its vowel. */
export interface Halves {
  /** The letters before the vowel: `sh`; may be empty. */
  readonly onset: Half;
  /** From the vowel on: `ip`. */
  readonly rime: Half;
}

/** Part of a word, with its sounds joined by spaces, and what a reader needs for it: of ship `sh`, of slip s, l, `start-sl`. */
export interface Half {
  readonly letters: string;
  readonly sound: string;
  readonly patterns: readonly string[];
}

/** Cuts ship into sh and ip; null for words of more syllables, with endings, or with no plain cut (said). */
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
