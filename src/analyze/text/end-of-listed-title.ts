import { isGrammarWord } from './is-grammar-word.ts';
import { isSmall } from './is-headline.ts';
import type { RawToken } from './match-tokens.ts';

const LISTED_BEFORE = /[”"],? (?:and )?[“"]$/;
const LISTED_AFTER = /^[,’]{0,2}[”"],? (?:and )?[“"]/;

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
