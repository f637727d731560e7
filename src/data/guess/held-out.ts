import { hashText } from '../../analyze/guess/choice-traits.ts';

/** True for a tenth of all words, by FNV-1a: nothing that is measured on them may be learnt from them. */
export function isHeldOut(word: string): boolean {
  return /^[a-z]{2,}$/.test(word) && hashOf(`seed1:${word}`) % 10 === 0;
}

/** In which of so many parts a word falls, whichever tenth is held out. */
export function partOf(word: string, parts: number): number {
  return hashOf(`part:${word}`) % parts;
}

function hashOf(text: string): number {
  return hashText(text) >>> 0;
}
