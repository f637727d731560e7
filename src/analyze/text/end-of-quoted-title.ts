import { isGrammarWord } from './is-grammar-word.ts';
import { isSmall } from './is-headline.ts';
import type { RawToken } from './match-tokens.ts';

/** The quotation has just been opened, or a title in it goes on behind a colon: “Low Tide: Rush of Kelp”. */
const OPENED = /[“"](?:\p{Lu}[^”"]{0,40}: )?$/u;
/** The end of a title, or the colon behind which it goes on. */
const CLOSED = /^(?:[.,’]{0,2}[”"]|: \p{Lu})/u;
const LISTED_BEFORE = /[”"],? (?:and )?[“"]$/;
/** The “Three Gulls.” */
const NAMED_BEFORE = /\b(?:the|an?|as|called|named|titled|dubbed|of|by|on) [“"]$/;
const LISTED_AFTER = /^[,’]{0,2}[”"],? (?:and )?[“"]/;
/** So many words with capitals, and none without except grammar words, are a title. */
const TITLE = 2;
/** With small words between them (“Terms of Sale”), or a mark inside that may end what somebody says (“Hello Bram,”). */
const UNSURE_TITLE = 3;

/**
 * Behind which token a title in quotation marks ends that begins at `from`, so that every capital in it is a name's: “The Long
 * Tide”, or one of several in a row (“Kelp,” “The Long Tide”); 0 where there is none, as in a talk, which has small letters.
 */
export function endOfQuotedTitle(
  text: string,
  tokens: readonly RawToken[],
  from: number,
  to: number,
): number {
  const before = text.slice(Math.max(0, tokens[from]!.start - 60), tokens[from]!.start);
  if (!OPENED.test(before)) return 0;
  let capitals = 0;
  let isSure = true;
  for (let at = from; at < to; at++) {
    const { start, end } = tokens[at]!;
    const isGrammar = isGrammarWord(text.slice(start, end).toLowerCase());
    if (!isSmall(text[start]!)) {
      // The It of “Biscuit Takes It Home” tells as much as the others; the first word of anything has a capital.
      if (!isGrammar || at > from) capitals++;
    } else if (isGrammar) isSure = false;
    else return 0;
    const after = text.slice(end, end + 12);
    // “Less Kelp, More Crabs” is a saying.
    if (after.startsWith(', ')) return 0;
    if (!CLOSED.test(after)) continue;
    const isListed = LISTED_BEFORE.test(before) || LISTED_AFTER.test(after);
    const isNamed = isSure && NAMED_BEFORE.test(before);
    const enough = isNamed || (isSure && !/^[.,]/.test(after)) ? TITLE : UNSURE_TITLE;
    return isListed || capitals >= enough ? at + 1 : 0;
  }
  return 0;
}
