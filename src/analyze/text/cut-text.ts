import { isHomograph } from '../homographs/is-homograph.ts';
import { isInCapitals, keyOfOpening, keyOfPart } from '../homographs/word-key.ts';
import type { Token, WordKey } from '../types.ts';
import { endOfQuotedTitle } from './end-of-quoted-title.ts';
import { endOfSentence } from './end-of-sentence.ts';
import { isGrammarWord } from './is-grammar-word.ts';
import { isHeadline } from './is-headline.ts';
import { isTextInCapitals } from './is-text-in-capitals.ts';
import { markCredit, markLongNames } from './mark-long-names.ts';
import { matchTokens, type RawToken } from './match-tokens.ts';

/** Only names have a capital inside: McCoy, YouTube, TQNews, also where they begin a sentence; not DIYers. */
const INNER_CAPITAL = /\p{Ll}\p{Lu}|^\p{Lu}{2,}(?!(?:er|ed|ing))\p{Ll}{2,}/u;

/** Names a word in its place, with the reading it has there. */
export type NameReading = (text: string, start: number, end: number, key: WordKey) => WordKey;

/**
 * A text cut into words and pieces that are left out, in order, not overlapping. A word's key is in small letters; a capital is
 * kept, with a sign where its place explains it or where it is a part of a longer name (`splitKey` says which signs there are),
 * because the word may be a name (the dog Duke). A homograph's key is what `nameReading` makes of it; without one it stays open.
 * Spans are in the text as given; keys are without soft hyphens, with straight apostrophes, in composed form (NFC). Any string
 * may be given.
 */
export function cutText(text: string, nameReading?: NameReading): Token[] {
  const tokens = matchTokens(text);
  const hasSlash = text.includes('/');
  for (let from = 0, to = 0; from < tokens.length; from = to) {
    to = endOfSentence(text, tokens, from);
    if (keySentence(text, tokens, from, to) > 0) markLongNames(text, tokens, from, to);
    markCredit(text, tokens, from, to, hasSlash);
    if (nameReading) {
      for (let i = from; i < to; i++) {
        const token = tokens[i]!;
        if (token.kind === 'word') token.key = nameReading(text, token.start, token.end, token.key);
      }
    }
  }
  return tokens;
}

/** Gives the tokens of a sentence their keys; gives back how many capitals its place and its shape do not explain. */
function keySentence(text: string, tokens: RawToken[], from: number, to: number): number {
  let meanNames: boolean | undefined;
  let isShouted: boolean | undefined;
  let endOfTitle: number | undefined;
  let opened = false;
  let kept = 0;
  for (let i = from; i < to; i++) {
    const token = tokens[i]!;
    if (token.key !== '') {
      opened = true;
      continue;
    }
    const piece = text.slice(token.start, token.end);
    const shown = plainLetters(piece);
    token.key = shown.toLowerCase();
    if (token.kind === 'word' && mayBeName(shown, token.key)) {
      endOfTitle ??= endOfQuotedTitle(text, tokens, from, to);
      if (i < endOfTitle || INNER_CAPITAL.test(shown)) token.key = keyOfPart(capitalised(shown));
      else if (isInCapitals(shown)) {
        isShouted ??= isTextInCapitals(text, tokens, from, to);
        token.key = isShouted ? opening(shown, token.key) : shown;
      } else if (!isGrammarWord(token.key)) {
        // A word that opens its sentence needs no headline to explain its capital.
        if (opened) meanNames ??= !isHeadline(text, tokens, from, to);
        const means = opened && meanNames === true;
        token.key = means ? capitalised(shown) : opening(shown, token.key);
        kept += Number(means);
      }
    }
    opened ||= !/\d/.test(piece);
  }
  return kept;
}

/** A capital first letter, and not I: Duke, STOP; not deCamp. */
function mayBeName(shown: string, small: string): boolean {
  return shown !== small && shown.length > 1 && /^\p{Lu}/u.test(shown) && !/^I'/.test(shown);
}

/** Words of grammar are no names, and a homograph's key has room for its reading alone. */
function opening(shown: string, small: string): WordKey {
  return isGrammarWord(small) || isHomograph(small) ? small : keyOfOpening(capitalised(shown));
}

/** Letters that look like two (the ligature of fish in a PDF) or are as wide as two are plain letters to a reader. */
function plainLetters(shown: string): string {
  if (/^[A-Za-z']+$/.test(shown)) return shown;
  const plain = shown.replace(/-\r?\n|[\u00AD\u200B-\u200D\u2060\uFEFF]/g, '').replace(/[’ʼ＇´`‛′]/g, "'");
  return plain.normalize(/[\uFB00-\uFB06\uFF21-\uFF5A]/.test(plain) ? 'NFKC' : 'NFC');
}

/** O'Brien and McCoy too keep only their first capital. */
function capitalised(key: string): string {
  return key[0]! + key.slice(1).toLowerCase();
}
