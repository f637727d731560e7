import { isGrammarWord } from './is-grammar-word.ts';
import type { RawToken } from './match-tokens.ts';

/** A line of its own that begins with a word of grammar needs only two: The Lost Lamp, not Captain Wilma Falk. */
const LONG_WORDS = 3;
const LONG_WORDS_AFTER_OPENER = 2;
const LONG = 4;
/** In tokens: more capitals in a row are a list of names (places and dates of a tour), as are some with an @ between them. */
const LONGEST = 20;
const LISTED_BEFORE = /[”"],? (?:and )?[“"]$/;
const LISTED_AFTER = /^[,’]{0,2}[”"],? (?:and )?[“"]/;

/**
 * True where capitals are those of a headline and say nothing of names: every word but those of grammar has one, no
 * full stop ends it, and some are long (Storm Keeps Marigold In Harbour; not: On Monday I met Ines). The sentence is
 * the tokens from `from` to before `to`.
 */
export function isHeadline(text: string, tokens: readonly RawToken[], from: number, to: number): boolean {
  if (to - from > LONGEST || /\s@\s/.test(text.slice(tokens[from]!.start, tokens[to - 1]!.end))) return false;
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

/**
 * Behind which token a title ends that begins at `from`, one of several in a row (“Old Boats,” “The Long Tide” and “Kelp”), so
 * that every capital in it is a name's; 0 where there is none, as in a talk, where more than a comma parts the quotations.
 */
export function endOfListedTitle(
  text: string,
  tokens: readonly RawToken[],
  from: number,
  to: number,
): number {
  const before = text.slice(Math.max(0, tokens[from]!.start - 12), tokens[from]!.start);
  if (!/[“"]$/.test(before)) return 0;
  for (let at = from; at < to; at++) {
    const { start, end } = tokens[at]!;
    if (isSmall(text[start]!) && !isGrammarWord(text.slice(start, end))) return 0;
    const after = text.slice(end, end + 12);
    if (!/^[,’]{0,2}[”"]/.test(after)) continue;
    const isListed = LISTED_BEFORE.test(before) || LISTED_AFTER.test(after);
    return isListed ? at + 1 : 0;
  }
  return 0;
}

function isSmall(letter: string): boolean {
  return letter.toUpperCase() !== letter;
}
