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
  const raw = matchTokens(text);
  const tokens: Token[] = [];
  for (let from = 0, to = 0; from < raw.length; from = to) {
    to = endOfSentence(text, raw, from);
    const capitalsMean = !isHeadline(text, raw, from, to);
    let opened = false;
    for (let i = from; i < to; i++) {
      const { start, end, kind, isPlain } = raw[i]!;
      const shown = isPlain ? text.slice(start, end) : keyOf(text.slice(start, end));
      const small = isPlain ? shown : shown.toLowerCase();
      const isName = small !== shown && kind === 'word' && capitalsMean && opened && mayBeName(shown);
      const key = isName ? capitalised(shown) : small;
      const named = nameReading && kind === 'word' ? nameReading(text, start, end, key) : key;
      tokens.push({ start, end, kind, key: named });
      opened ||= isPlain || !/\d/.test(text.slice(start, end));
    }
  }
  return tokens;
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
