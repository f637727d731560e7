import { isInCapitals } from '../homographs/word-key.ts';
import type { RawToken } from './match-tokens.ts';

/** The number of consecutive words in capitals that shows a text in capitals throughout: DO NOT RUN on the quay. */
const ON_END = 3;

/**
 * Whether a sentence is written in capitals, which then say nothing about its words: FERRY LATE AGAIN, US SEES SNOW;
 * not: The UN and the US met. This is so where no word has lower-case letters, or where most words are in capitals and
 * three of them are consecutive. The sentence is the tokens from `from` to before `to`.
 */
export function isTextInCapitals(
  text: string,
  tokens: readonly RawToken[],
  from: number,
  to: number,
): boolean {
  let inCapitals = 0;
  let others = 0;
  let onEnd = 0;
  let longest = 0;
  for (let i = from; i < to; i++) {
    const { start, end, kind } = tokens[i]!;
    if (kind !== 'word' || end - start < 2) continue;
    if (isInCapitals(text.slice(start, end))) {
      inCapitals++;
      onEnd = i > from && !/^\s*$/.test(text.slice(tokens[i - 1]!.end, start)) ? 1 : onEnd + 1;
      longest = Math.max(longest, onEnd);
    } else {
      others++;
      onEnd = 0;
    }
  }
  if (others === 0) return inCapitals > 1;
  return longest >= ON_END && inCapitals > others;
}
