import type { Correspondence } from '../lexicon/word-record.ts';

/**
 * Where each spelling starts in the word, with the word's length at the end; null when together they are not
 * this word. A split vowel starts where its vowel letter is, and its e counts to the consonant before:
 * h, o_e, p in hope give 0, 1, 2, 4.
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
