import { hashText } from '../../analyze/guess/choice-traits.ts';

/**
 * Whether a word is in the tenth that is held out, by its FNV-1a hash. Nothing may be learnt from words that a
 * measurement uses.
 */
export function isHeldOut(word: string): boolean {
  return /^[a-z]{2,}$/.test(word) && hashOf(`seed1:${word}`) % 10 === 0;
}

/** Returns which of `parts` parts a word belongs to, independent of the held-out tenth. */
export function partOf(word: string, parts: number): number {
  return hashOf(`part:${word}`) % parts;
}

function hashOf(text: string): number {
  return hashText(text) >>> 0;
}
