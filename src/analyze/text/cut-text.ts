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

/** A capital inside a word. Only names have one, even at the start of a sentence: McCoy, YouTube, TQNews; not DIYers. */
const INNER_CAPITAL = /\p{Ll}\p{Lu}|^\p{Lu}{2,}(?!(?:er|ed|ing))\p{Ll}{2,}/u;

/** Returns the key of a word with the reading that the word has at its place in the text. */
export type NameReading = (text: string, start: number, end: number, key: WordKey) => WordKey;

/**
 * Cuts a text into words and skipped pieces, in order and without overlap. A word's key is in lower case, but a capital
 * is kept because the word may be a name (the dog Duke). The key has a sign where the place of the word explains the
 * capital, or where the word is part of a longer name (`splitKey` lists the signs). `nameReading` returns the key of a
 * homograph; without `nameReading` the reading stays open.
 * Spans are in the text as given. Keys have no soft hyphens, have straight apostrophes and are in composed form (NFC).
 * Any string may be given.
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

/**
 * Sets the keys of the tokens of a sentence. Returns the number of capitals that the place in the sentence and the
 * shape of the sentence do not explain.
 */
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

/** Returns whether a word has a capital first letter and is not I: Duke, STOP; not deCamp. */
function mayBeName(shown: string, small: string): boolean {
  return shown !== small && shown.length > 1 && /^\p{Lu}/u.test(shown) && !/^I'/.test(shown);
}

/**
 * Returns the key of a word that opens a sentence. Grammar words are no names, and the key of a homograph has room only
 * for its reading, so both kinds of key stay in lower case.
 */
function opening(shown: string, small: string): WordKey {
  return isGrammarWord(small) || isHomograph(small) ? small : keyOfOpening(capitalised(shown));
}

/**
 * Returns the plain letters of a word. A ligature (as in fish in a PDF) and a full-width letter are plain letters to a
 * reader.
 */
function plainLetters(shown: string): string {
  if (/^[A-Za-z']+$/.test(shown)) return shown;
  const plain = shown.replace(/-\r?\n|[\u00AD\u200B-\u200D\u2060\uFEFF]/g, '').replace(/[’ʼ＇´`‛′]/g, "'");
  return plain.normalize(/[\uFB00-\uFB06\uFF21-\uFF5A]/.test(plain) ? 'NFKC' : 'NFC');
}

/** Returns a key with only its first letter as a capital, even for O'Brien and McCoy. */
function capitalised(key: string): string {
  return key[0]! + key.slice(1).toLowerCase();
}
