import { standsBeforeName } from './abbreviations.ts';
import { isGrammarWord } from './is-grammar-word.ts';
import type { RawToken } from './match-tokens.ts';

/** A break after which a capital says nothing about the word, such as a full stop, a quotation mark or a blank line. */
const BREAK = /[.!?…:]["”’')\]]*\s|[“"«‹•*]|(?:^|[\s([—–-])['‘]/u;
/** The length in characters from which a line may have been wrapped. A shorter line ends where its writer ended it. */
const WRAPPED = 45;

/**
 * Returns the index after the last token of the sentence that starts at token `first`. A quotation in a sentence begins
 * a separate part.
 */
export function endOfSentence(text: string, tokens: readonly RawToken[], first: number): number {
  let next = first + 1;
  while (
    next < tokens.length &&
    (!isBreak(text, tokens[next - 1]!, tokens[next]!) || isInitial(text, tokens, next - 1))
  )
    next++;
  return next;
}

function isBreak(text: string, before: RawToken, { start }: RawToken): boolean {
  const { end } = before;
  if (start === end + 1 && text.charCodeAt(end) === 0x20) return false;
  const between = text.slice(end, start);
  if (between === ', ') return false;
  if (endsLine(text, end, between)) return true;
  return before.kind === 'skipped' && goesOn(text, before, start)
    ? /[“"«]/.test(between)
    : BREAK.test(between);
}

/** Returns whether a token is one letter with a full stop between the parts of a name: Wilma B. Falk; not Plan B. Then. */
function isInitial(text: string, tokens: readonly RawToken[], at: number): boolean {
  const before = tokens[at - 1];
  const { start, end } = tokens[at]!;
  const next = tokens[at + 1]!;
  return (
    before !== undefined &&
    /^ \p{Lu}\. \p{Lu}\p{Ll}/u.test(text.slice(start - 1, next.start + 2)) &&
    before.end === start - 1 &&
    next.start === end + 2 &&
    /\p{Lu}/u.test(text[before.start]!) &&
    !isGrammarWord(text.slice(next.start, next.end).toLowerCase())
  );
}

/**
 * Returns whether a sentence continues after a skipped piece. True after Mr. and U.S., which a name follows, and within
 * Jan. 5. False after 5 p.m. and etc., where a sentence may end.
 */
function goesOn(text: string, { start, end }: RawToken, next: number): boolean {
  if (text[end - 1] !== '.') return false;
  const shown = text.slice(start, end - 1);
  if (/^[ap]\.m$/i.test(shown)) return false;
  return shown.includes('.') || shown.length === 1 || standsBeforeName(shown) || !/\p{Lu}/u.test(text[next]!);
}

/** Returns whether a line ends with a blank line, or is too short to have been wrapped: a heading, a list, a verse. */
function endsLine(text: string, end: number, between: string): boolean {
  if (!/[\n\r]/.test(between)) return false;
  if (/(?:\r\n|\n|\r)[^\S\r\n]*(?:\r\n|\n|\r)/.test(between)) return true;
  const line = text.slice(Math.max(0, end - WRAPPED), end);
  return end < WRAPPED || /[\n\r]/.test(line.trimStart());
}
