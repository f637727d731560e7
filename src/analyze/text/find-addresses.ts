import type { Span } from '../types.ts';

/** A sign that a stretch without spaces may contain an address. Most stretches contain no such sign. */
const SIGN = /[@#]|:\/\/|[\\/](?=\w)|\[edit|www\.|\.(?:com|org|net|edu|gov|info|example|uk)\b/g;
const ADDRESS =
  /(?:https?:\/\/|www\.)[^<>"“”]*[^<>"“”.,;:!?)\]]|[\p{L}\p{N}._%+-]{1,64}@[\p{L}\p{N}-]{1,64}(?:\.[\p{L}\p{N}-]{1,64})+|(?<![\p{L}\p{N}])[@#][\p{L}\p{N}_]+|(?:[\p{L}\p{N}-]{1,64}\.){1,4}(?:com|org|net|edu|gov|info|example|uk)\b(?:\/[^<>"“”]*)?/u;
/** A path begins at its root (/logs/tide, C:\logs) or ends in a file extension (logs/tide.txt). he/she/they is no path. */
const PATH =
  /(?<![^\s("'“‘[])(?:(?:[A-Za-z]:\\|~?\/|\.{1,2}\/)[\w.-]+(?:[\\/][\w.-]+)+|[A-Za-z]:\\[\w.-]+|(?:[\w-]+[\\/])+[\w-]+\.[a-z]\w{0,4}\b)/;
/** The name of a TeX command, as in the formulas of a page’s text, and the edit link of an encyclopedia. */
const COMMAND = /\\[A-Za-z]+|\[edit\]/;
const PIECE = new RegExp(`${ADDRESS.source}|${PATH.source}|${COMMAND.source}`, 'gu');
const SPACE = /\s/;

/**
 * Returns web and mail addresses, @names, #tags, file paths and TeX commands, in order: www.tarnquay.example,
 * ines@quay.example, logs/tide.txt, \frac; not and/or.
 */
export function findAddresses(text: string): Span[] {
  const found: Span[] = [];
  let done = 0;
  for (const { index } of text.matchAll(SIGN)) {
    if (index < done) continue;
    let from = index;
    while (from > done && !SPACE.test(text[from - 1]!)) from--;
    done = index + 1;
    while (done < text.length && !SPACE.test(text[done]!)) done++;
    for (const match of text.slice(from, done).matchAll(PIECE)) {
      const start = from + match.index;
      found.push({ start, end: start + match[0].length });
    }
  }
  return found;
}
