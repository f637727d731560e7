import { isGrammarWord } from './is-grammar-word.ts';
import type { RawToken } from './match-tokens.ts';

/** A line of its own that begins with a word of grammar needs only two: The Lost Lamp, not Captain Wilma Falk. */
const LONG_WORDS = 3;
const LONG_WORDS_AFTER_OPENER = 2;
const LONG = 4;

/**
 * True where capitals are those of a headline and say nothing of names: every word but those of grammar has one, no
 * full stop ends it, and some are long (Storm Keeps Marigold In Harbour; not: On Monday I met Ines).
 */
export function isHeadline(text: string, sentence: readonly RawToken[]): boolean {
  const [first, ...others] = sentence;
  const words = others.filter(({ kind }) => kind === 'word');
  const long = words.filter(({ start, end }) => end - start >= LONG && !isSmall(text[start]!)).length;
  if (!first || long < LONG_WORDS_AFTER_OPENER) return false;
  const after = text.slice(sentence.at(-1)!.end, sentence.at(-1)!.end + 40);
  if (/^["”’')]?[.,;]/.test(after)) return false;
  const opens = isGrammarWord(text.slice(first.start, first.end).toLowerCase());
  const isLine = /^[!?]?[^\S\n]*(?:\n|$)/.test(after);
  if (long < LONG_WORDS && !(opens && isLine)) return false;
  return words.every(({ start, end }) => !isSmall(text[start]!) || isGrammarWord(text.slice(start, end)));
}

function isSmall(letter: string): boolean {
  return letter.toUpperCase() !== letter;
}
