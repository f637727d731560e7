import { isGrammarWord } from './is-grammar-word.ts';
import type { RawToken } from './match-tokens.ts';

/** A line of its own that begins with a word of grammar needs only two: The Lost Lamp, not Captain Wilma Falk. */
const LONG_WORDS = 3;
const LONG_WORDS_AFTER_OPENER = 2;
const LONG = 4;
/** In tokens, of a headline or a label: more capitals in a row are a list of names (places and dates of a tour), as are some with an @ between them. */
export const LONGEST_HEADLINE = 20;

/**
 * True where capitals make a headline and say nothing of names: every word but grammar words has one, no
 * full stop ends it, and some are long (Storm Keeps Marigold In Harbour; not: On Monday I met Ines). The sentence is
 * the tokens from `from` to before `to`.
 */
export function isHeadline(text: string, tokens: readonly RawToken[], from: number, to: number): boolean {
  if (to - from > LONGEST_HEADLINE || /\s@\s/.test(text.slice(tokens[from]!.start, tokens[to - 1]!.end)))
    return false;
  // He said the King of Skarvik left: what goes on with a small letter is no headline.
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

/** True for a letter that has a capital and is not one. */
export function isSmall(letter: string): boolean {
  return letter.toUpperCase() !== letter;
}
