import { hasVowel, mergeWeak } from '../alignment/sounds.ts';
import type { GuessToken } from './guess-token.ts';

/** Number of weights. Traits with the same slot share one weight. */
export const TRAIT_SLOTS = 1 << 16;
/** The value of one step of a weight, as a natural logarithm. */
export const TRAIT_STEP = 0.05;

/**
 * The form of a token from which traits are made. Weak vowels are merged, because sources differ in the weak vowels
 * they distinguish.
 */
export interface TraitToken {
  readonly length: number;
  readonly stressed: boolean;
  readonly vowel: boolean;
  /** A hash of the letters, sound and stress. */
  readonly own: number;
  readonly sounds: readonly number[];
}

/** Prepares a token for {@link traitsOf}. */
export function traitToken({ text, letters, sound, stressed = false }: GuessToken): TraitToken {
  const merged = mergeWeak(sound);
  return {
    length: text.length,
    stressed,
    vowel: hasVowel(sound),
    own: hashText(`${letters}:${merged}:${Number(stressed)}`),
    sounds: sound === '-' ? [] : merged.split('.').map(hashText),
  };
}

/**
 * Returns the traits of a reading that a run of tokens cannot see, as slots of weights:
 * - the letters on both sides of a spelling
 * - the vowel before a spelling, across all consonants (the o of Torino)
 * - the end of the word (-ski, -ette)
 * - the number of stressed vowels, and which vowels are stressed
 * - three sounds in a row, without silent letters
 */
export function traitsOf(word: string, tokens: readonly TraitToken[]): number[] {
  const traits: number[] = [];
  const add = (kind: number, a: number, b: number, c = 0): void => {
    traits.push(mix(mix(mix(kind * 7919 + 13, a), b), c) & (TRAIT_SLOTS - 1));
  };
  const framed = `^^^${word}$$$`;
  const at = (i: number): number => framed.charCodeAt(i + 3);
  const [end1, end2, end3] = [1, 2, 3].map((n) => hashText(word.slice(-n))) as [number, number, number];
  const vowels = tokens.filter(({ vowel }) => vowel).length;
  let start = 0;
  let before = 0;
  let [sound1, sound2] = [1, 2];
  let [met, stressed, place] = [0, 0, -1];
  for (const token of tokens) {
    const end = start + token.length;
    add(1, token.own, at(end) * 256 + at(end + 1));
    add(2, token.own, at(start - 1) * 256 + at(start - 2));
    if (token.vowel) {
      const fromEnd = Math.min(4, vowels - 1 - met);
      add(3, token.own, before);
      add(4, token.own, fromEnd, Math.min(5, vowels));
      add(5, token.own, end1, fromEnd);
      add(6, token.own, end2);
      add(7, token.own, end3);
      if (token.stressed) {
        place = fromEnd;
        stressed++;
      }
      before = token.own;
      met++;
    }
    for (const sound of token.sounds) {
      add(8, sound, sound1, sound2);
      [sound1, sound2] = [sound, sound1];
    }
    start = end;
  }
  add(9, stressed, vowels);
  add(10, place, vowels, end3);
  add(11, place, vowels, end2);
  return traits;
}

/** Returns a 32-bit hash of a text (FNV-1a). */
export function hashText(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash | 0;
}

function mix(a: number, b: number): number {
  let hash = Math.imul(a ^ b, 0x9e3779b1);
  hash = Math.imul(hash ^ (hash >>> 15), 0x85ebca6b);
  return hash ^ (hash >>> 13);
}
