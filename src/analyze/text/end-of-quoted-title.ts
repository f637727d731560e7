import { isGrammarWord } from './is-grammar-word.ts';
import { isSmall } from './is-headline.ts';
import type { RawToken } from './match-tokens.ts';

/** The start of a quotation that has just opened, or of a title that continues after a colon: “Low Tide: Rush of Kelp”. */
const OPENED = /[“"](?:\p{Lu}[^”"]{0,40}: )?$/u;
/** The end of a title, or the colon after which the title continues. */
const CLOSED = /^(?:[.,’]{0,2}[”"]|: \p{Lu})/u;
const LISTED_BEFORE = /[”"],? (?:and )?[“"]$/;
/** Words that introduce a title, such as the before “Three Gulls.” */
const NAMED_BEFORE = /\b(?:the|an?|as|called|named|titled|dubbed|of|by|on) [“"]$/;
const LISTED_AFTER = /^[,’]{0,2}[”"],? (?:and )?[“"]/;
/** The number of words with capitals that make a title, if only grammar words have no capital. */
const TITLE = 2;
/**
 * The number of words with capitals that make a less sure title. Such a title has lower-case words inside (“Terms of
 * Sale”) or a mark that may end direct speech (“Hello Bram,”).
 */
const UNSURE_TITLE = 3;

/**
 * Returns the end of a title in quotation marks that begins at token `from`: “The Long Tide”, or one of several titles
 * in a row (“Kelp,” “The Long Tide”). Every capital in a title belongs to a name. Returns 0 if there is no title, as in
 * direct speech, which has lower-case letters.
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
      // A grammar word with a capital counts like the other words: the It of “Biscuit Takes It Home”. A grammar word at
      // the start does not count, since every first word has a capital.
      if (!isGrammar || at > from) capitals++;
    } else if (isGrammar) isSure = false;
    else return 0;
    const after = text.slice(end, end + 12);
    // A comma inside marks a saying: “Less Kelp, More Crabs”.
    if (after.startsWith(', ')) return 0;
    if (!CLOSED.test(after)) continue;
    const isListed = LISTED_BEFORE.test(before) || LISTED_AFTER.test(after);
    const isNamed = isSure && NAMED_BEFORE.test(before);
    const enough = isNamed || (isSure && !/^[.,]/.test(after)) ? TITLE : UNSURE_TITLE;
    return isListed || capitals >= enough ? at + 1 : 0;
  }
  return 0;
}
