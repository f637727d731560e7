import type { RawToken } from './match-tokens.ts';

/** A run of tokens that starts where a capital says nothing: after a full stop, a quotation mark, a blank line. */
const BREAK = /[.!?…:]["”’')\]]*\s|[“"«‹•*]|(?:^|[\s([—–-])['‘]/u;
/** A line this long, in characters, may have been wrapped; a shorter one ends where its writer ended it. */
const WRAPPED = 45;

/** Tokens gathered into sentences (or parts of one that begin a quotation), all of them in order. */
export function findSentences(text: string, tokens: readonly RawToken[]): RawToken[][] {
  const sentences: RawToken[][] = [];
  let end = 0;
  for (const [i, token] of tokens.entries()) {
    const between = text.slice(end, token.start);
    const before = tokens[i - 1];
    const afterTitle = before?.kind === 'skipped' && isOpenEnded(text, before);
    const starts =
      i === 0 || endsLine(text, end, between) || (afterTitle ? /[“"«]/.test(between) : BREAK.test(between));
    if (starts) sentences.push([token]);
    else sentences.at(-1)!.push(token);
    end = token.end;
  }
  return sentences;
}

/** True after Mr. and U.S., which a name follows; false after 5 p.m. and etc., where a sentence may end. */
function isOpenEnded(text: string, { start, end }: RawToken): boolean {
  const shown = text.slice(start, end);
  return shown.endsWith('.') && !/^(?:[ap]\.m|etc|Jr|Sr)\.$/i.test(shown);
}

/** A blank line, or the end of a line too short to have been wrapped: a heading, a list, a verse. */
function endsLine(text: string, end: number, between: string): boolean {
  if (!/[\n\r]/.test(between)) return false;
  if (/(?:\r\n|\n|\r)[^\S\r\n]*(?:\r\n|\n|\r)/.test(between)) return true;
  const line = text.slice(Math.max(0, end - WRAPPED), end);
  return end < WRAPPED || /[\n\r]/.test(line.trimStart());
}
