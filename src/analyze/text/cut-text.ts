import type { Token, WordKey } from '../types.ts';
import { endOfSentence } from './end-of-sentence.ts';
import { isHeadline } from './is-headline.ts';
import { matchTokens } from './match-tokens.ts';
import { mayBeName } from './may-be-name.ts';

/** Names a word in its place, with the reading it has there. */
export type NameReading = (text: string, start: number, end: number, key: WordKey) => WordKey;

/**
 * A text cut into words and pieces that are left out, in order, not overlapping. A word's key is in lower
 * case; a capital that no sentence start or headline explains is kept, because the word may be a name
 * (the dog Duke). A homograph's key is what `nameReading` makes of it; without one it stays open. Spans are in
 * the text as given; keys are without soft hyphens, with straight apostrophes, in composed form (NFC). Any string
 * may be given.
 */
export function cutText(text: string, nameReading?: NameReading): Token[] {
  const tokens = matchTokens(text);
  for (let from = 0, to = 0; from < tokens.length; from = to) {
    to = endOfSentence(text, tokens, from);
    const capitalsMean = !isHeadline(text, tokens, from, to);
    let opened = false;
    for (let i = from; i < to; i++) {
      const token = tokens[i]!;
      const { start, end, kind } = token;
      if (token.key !== '') opened = true;
      else {
        const piece = text.slice(start, end);
        token.key = keyInPlace(keyOf(piece), kind === 'word' && capitalsMean && opened);
        opened ||= !/\d/.test(piece);
      }
      if (nameReading && kind === 'word') token.key = nameReading(text, start, end, token.key);
    }
  }
  return tokens;
}

function keyInPlace(shown: string, capitalMeans: boolean): WordKey {
  const small = shown.toLowerCase();
  return small !== shown && capitalMeans && mayBeName(shown) ? capitalised(shown) : small;
}

/** Letters that look like two (the ligature of fish in a PDF) or are as wide as two are plain letters to a reader. */
function keyOf(shown: string): string {
  if (/^[A-Za-z']+$/.test(shown)) return shown;
  const plain = shown.replace(/[\u00AD\u200B-\u200D\u2060\uFEFF]/g, '').replace(/[’ʼ＇´`‛′]/g, "'");
  return plain.normalize(/[\uFB00-\uFB06\uFF21-\uFF5A]/.test(plain) ? 'NFKC' : 'NFC');
}

/** O'Brien and McCoy too keep only their first capital. */
function capitalised(key: string): string {
  return key[0]! + key.slice(1).toLowerCase();
}
