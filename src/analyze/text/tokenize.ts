import type { Token } from '../types.ts';
import { findSentences } from './find-sentences.ts';
import { matchTokens, type RawToken } from './match-tokens.ts';

/**
 * A sentence is a headline when this share of its longer words has a capital and no full stop
 * ends it: Storm Keeps Marigold In Harbour.
 */
const HEADLINE_SHARE = 0.75;
const HEADLINE_WORDS = 3;
const LONGER = 4;

/**
 * A text cut into words and pieces that are left out, in order, not overlapping. A word's key is in lower
 * case; a capital that no sentence start or headline explains is kept, because the word may be a name
 * (the dog Duke). Spans are in the text as given; keys are without soft hyphens, with straight apostrophes,
 * in composed form (NFC). Any string may be given.
 */
export function tokenize(text: string): Token[] {
  const raw = [...matchTokens(text)];
  return findSentences(text, raw).flatMap((sentence) => {
    const capitalsMean = !isHeadline(text, sentence);
    return sentence.map((token, i): Token => {
      const key = keyOf(text.slice(token.start, token.end));
      const keepsCapital = token.kind === 'word' && capitalsMean && i > 0 && mayBeName(key);
      return { ...token, key: keepsCapital ? capitalised(key) : key.toLowerCase() };
    });
  });
}

function keyOf(shown: string): string {
  return shown
    .replaceAll('\u00AD', '')
    .replace(/[’ʼ＇]/g, "'")
    .normalize('NFC');
}

/** A capital first letter with others small; not I, I'm, or a word in capitals throughout. */
function mayBeName(key: string): boolean {
  return /^\p{Lu}/u.test(key) && /\p{Ll}/u.test(key) && !/^I'/.test(key);
}

/** O'Brien and McCoy too keep only their first capital. */
function capitalised(key: string): string {
  return key[0]! + key.slice(1).toLowerCase();
}

function isHeadline(text: string, sentence: readonly RawToken[]): boolean {
  const longer = sentence.slice(1).filter(({ kind, start, end }) => kind === 'word' && end - start >= LONGER);
  const end = sentence.at(-1)!.end;
  if (longer.length < HEADLINE_WORDS || /^["”’')]?[.,;]/.test(text.slice(end, end + 2))) return false;
  const capitals = longer.filter(({ start }) => /\p{Lu}/u.test(text.slice(start, start + 1)));
  return capitals.length >= longer.length * HEADLINE_SHARE;
}
