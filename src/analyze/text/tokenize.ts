import { markReading } from '../homographs/mark-reading.ts';
import type { Token } from '../types.ts';
import { findSentences } from './find-sentences.ts';
import { isHeadline } from './is-headline.ts';
import { matchTokens } from './match-tokens.ts';
import { mayBeName } from './may-be-name.ts';

/**
 * A text cut into words and pieces that are left out, in order, not overlapping. A word's key is in lower
 * case; a capital that no sentence start or headline explains is kept, because the word may be a name
 * (the dog Duke), and a homograph has its reading behind it where the context tells it (read#1). Spans are in
 * the text as given; keys are without soft hyphens, with straight apostrophes, in composed form (NFC). Any string
 * may be given.
 */
export function tokenize(text: string): Token[] {
  const raw = [...matchTokens(text)];
  return findSentences(text, raw).flatMap((sentence) => {
    const capitalsMean = !isHeadline(text, sentence);
    const opening = sentence.findIndex(({ start, end }) => !/\d/.test(text.slice(start, end)));
    return sentence.map(({ start, end, kind }, i): Token => {
      const shown = keyOf(text.slice(start, end));
      const small = shown.toLowerCase();
      const isName = small !== shown && kind === 'word' && capitalsMean && i > opening && mayBeName(shown);
      const key = isName ? capitalised(shown) : small;
      return { start, end, kind, key: kind === 'word' ? markReading(text, { start, end }, key) : key };
    });
  });
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
