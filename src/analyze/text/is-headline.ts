import { isGrammarWord } from './is-grammar-word.ts';
import type { RawToken } from './match-tokens.ts';

/**
 * The number of long words in a headline. A line of its own that begins with a word of grammar needs only two: The Lost
 * Lamp, not Captain Wilma Falk.
 */
const LONG_WORDS = 3;
const LONG_WORDS_AFTER_OPENER = 2;
const LONG = 4;
/**
 * The most tokens in a headline or a label. A longer row of capitals is a list of names (places and dates of a tour).
 * So are capitals with an @ between them.
 */
export const LONGEST_HEADLINE = 20;

/**
 * Returns whether the capitals of a sentence make a headline and say nothing about names. In a headline every word
 * except grammar words has a capital, no full stop ends the line, and some words are long (Storm Keeps Marigold In
 * Harbour; not: On Monday I met Ines). The sentence is the tokens from `from` to before `to`.
 */
export function isHeadline(text: string, tokens: readonly RawToken[], from: number, to: number): boolean {
  if (to - from > LONGEST_HEADLINE || /\s@\s/.test(text.slice(tokens[from]!.start, tokens[to - 1]!.end)))
    return false;
  // A sentence that starts with a lower-case letter is no headline, as in: He said the King of Skarvik left.
  const first = tokens[from]!;
  if (first.kind === 'word' && isSmall(text[first.start]!)) return false;
  let long = 0;
  for (let i = from + 1; i < to; i++) {
    const { start, end, kind } = tokens[i]!;
    if (kind !== 'word') continue;
    if (!isSmall(text[start]!)) long += end - start >= LONG ? 1 : 0;
    else if (!isGrammarWord(text.slice(start, end))) return false;
  }
  if (long < LONG_WORDS_AFTER_OPENER) return false;
  const after = text.slice(tokens[to - 1]!.end, tokens[to - 1]!.end + 40);
  if (/^["”’')]?[.,;]/.test(after)) return false;
  const opens = isGrammarWord(text.slice(first.start, first.end).toLowerCase());
  const isLine = /^[!?]?[^\S\n]*(?:\n|$)/.test(after);
  return long >= LONG_WORDS || (opens && isLine);
}

/** Returns whether a letter has a capital form and is not a capital. */
export function isSmall(letter: string): boolean {
  return letter.toUpperCase() !== letter;
}
