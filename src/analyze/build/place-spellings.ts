import type { Correspondence } from '../lexicon/word-record.ts';

/**
 * Returns the start of each spelling in the word, followed by the length of the word. Returns null if the spellings do
 * not make up this word. A split vowel starts at its vowel letter, and its e counts as part of the consonant before: h,
 * o_e, p in hope give 0, 1, 2, 4.
 */
export function placeSpellings(word: string, spellings: readonly Correspondence[]): number[] | null {
  const starts: number[] = [];
  let at = 0;
  let consonantsSinceSplit = -1;
  for (const { letters } of spellings) {
    if (consonantsSinceSplit > 0 && word[at] === 'e' && (letters[0] !== 'e' || word[at + 1] === 'e')) {
      at++;
      consonantsSinceSplit = -1;
    }
    starts.push(at);
    const split = letters[1] === '_';
    const text = split ? letters[0]! : letters;
    if (!word.startsWith(text, at)) return null;
    at += text.length;
    if (split) consonantsSinceSplit = 0;
    else if (consonantsSinceSplit >= 0) consonantsSinceSplit++;
  }
  if (consonantsSinceSplit > 0 && word[at] === 'e') at++;
  starts.push(at);
  return at === word.length ? starts : null;
}
