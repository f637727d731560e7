import type { Span } from '../types.ts';
import { isShortened, isShortForm } from './abbreviations.ts';
import { findAddresses } from './find-addresses.ts';

/** A piece of a text, before its place in a sentence is considered. */
export interface RawToken extends Span {
  readonly kind: 'word' | 'skipped';
  /**
   * Two or more lower-case letters from a to z are their own key. The other pieces get their keys by their place
   * (`cutText`).
   */
  key: string;
}

/**
 * Letters and digits. A run may contain apostrophes (in any typed form), soft hyphens and other signs without width,
 * the marks of numbers between digits, and the hyphen of a word broken at the end of a line.
 */
const RUN =
  /[\p{L}\p{N}_](?:(?<=\p{L})(?<!(?:^|\P{L})(?:half|ill|self|well))-\r?\n(?=\p{Ll})|[\p{L}\p{M}\p{N}_\u00AD\u200B-\u200D\u2060\uFEFF]|['’ʼ＇´`‛′](?=[\p{L}\p{N}])|(?<=\p{N})[.,:/-](?=\p{N}))*/gu;
const LATIN = /^(?:\p{Script=Latin}|-\r?\n|\p{M}|['’ʼ＇´`‛′\u00AD\u200B-\u200D\u2060\uFEFF])+$/u;
const PLAIN = /^[A-Za-z]+$/;
/** A capital after lower-case letters: camelCase, eBay; not McCoy. */
const CAMEL = /^\p{Ll}+\p{Lu}/u;
/** Signs that may continue a run: full stops, apostrophes and hyphens. */
const MAY_GO_ON = /[.'’-]/;
/**
 * The length of the longest word in UTF-16 units. The longest word of a dictionary has 45 letters. A longer token is no
 * word and would keep the engine busy.
 */
const LONGEST = 120;
const BLANK = 0x20;
/**
 * The stand-in for the next address if there is none. It starts after the end of any text. Its start is a small
 * integer, because small integers are compared fastest.
 */
const NOWHERE: Span = { start: 2 ** 30 - 1, end: 0 };
const NOT_LETTERS = /[\p{N}_]/u;

/**
 * Returns every piece of a text that is read or left out, in order.
 *
 * Words are runs of letters. An apostrophe between letters joins them (don't), and a soft hyphen stays inside a word. A
 * hyphen at the end of a line before lower-case letters also stays inside a word (chil- with dren on the next line; not
 * well- with kept). Any other hyphen separates words (well-kept is well and kept).
 *
 * The pieces left out are addresses, anything with a digit (3rd, 10:45), short forms (Mr., e.g., U.S., km), initialisms
 * that cannot be words (TV, CEOs), single letters except a and I, other scripts, and runs of letters longer than any
 * word.
 */
export function matchTokens(text: string): RawToken[] {
  const addresses = [...findAddresses(text), NOWHERE];
  const tokens: RawToken[] = [];
  let address = addresses[0]!;
  let next = 0;
  let done = 0;
  for (let start = 0, end = 0; start < text.length; start = end) {
    if (isOutside(text.charCodeAt(start))) {
      end = start + 1;
      continue;
    }
    // Most words are lower-case letters with a blank after them.
    end = endOfSmall(text, start);
    if (text.charCodeAt(end) === BLANK && end - start > 1 && start >= done && end <= address.start) {
      tokens.push(smallToken(text, start, end));
      continue;
    }
    end = endOfLetters(text, start);
    if (end === 0) {
      RUN.lastIndex = start;
      const match = RUN.exec(text);
      if (!match) break;
      start = match.index;
      end = RUN.lastIndex;
    }
    if (start < done) continue;
    // Letters joined to an address by an apostrophe are part of it: o'brien@tarnquay.example.
    if (end > address.start) {
      const from = Math.min(start, address.start);
      tokens.push({ start: from, end: address.end, kind: 'skipped', key: '' });
      done = address.end;
      address = addresses[++next]!;
      continue;
    }
    const isSmall = end - start > 1 && endOfSmall(text, start) === end;
    const token =
      isSmall && !MAY_GO_ON.test(text.charAt(end))
        ? smallToken(text, start, end)
        : anyToken(text, start, end, isSmall, address.start);
    tokens.push(token);
    done = token.end;
  }
  return tokens;
}

/** The class of each sign of ASCII in `RUN`. It is a table, because every letter of a text is looked up. */
const signs = Array.from({ length: 128 }, (_, code) => {
  const sign = String.fromCharCode(code);
  if (/[A-Za-z]/.test(sign)) return 'letter';
  return /[\d_]/.test(sign) ? 'other' : 'outside';
});
const outside = Uint8Array.from(signs, (sign) => Number(sign === 'outside'));
const letters = Uint8Array.from(signs, (sign) => Number(sign === 'letter'));
/** Signs that end a run of letters. An apostrophe, a hyphen and a digit do not end a run. */
const ends = Uint8Array.from(signs, (sign, code) =>
  Number(sign === 'outside' && !"'`-".includes(String.fromCharCode(code))),
);

/** Returns whether a sign cannot begin a run. */
function isOutside(code: number): boolean {
  return code < 128 && outside[code] === 1;
}

/**
 * Returns where a run of plain letters ends. Most runs consist of plain letters. Returns 0 if only `RUN` can find the
 * end.
 */
function endOfLetters(text: string, start: number): number {
  let end = start;
  let code = text.charCodeAt(end);
  while (code < 128 && letters[code] === 1) code = text.charCodeAt(++end);
  return end > start && (end === text.length || (code < 128 && ends[code] === 1)) ? end : 0;
}

/** Returns where a run of the letters a to z ends. */
function endOfSmall(text: string, start: number): number {
  let end = start;
  while (end < text.length) {
    const code = text.charCodeAt(end);
    if (code < 0x61 || code > 0x7a) break;
    end++;
  }
  return end;
}

function isWord(run: string): boolean {
  return (
    run.length <= LONGEST &&
    (PLAIN.test(run) || (!NOT_LETTERS.test(run) && LATIN.test(run))) &&
    !CAMEL.test(run)
  );
}

/** Returns where an abbreviation ends, including its full stop; 0 for a word. */
function endOfAbbreviation(text: string, run: string, end: number): number {
  if (run.length === 1) {
    const dotted = text[end] === '.' ? /^(?:\.\p{L})+\.?/u.exec(text.slice(end, end + 12)) : null;
    if (dotted) return end + dotted[0].length;
    return /[aAI]/.test(run) ? 0 : end;
  }
  if (text[end] === '.' && isShortened(run, text.slice(end + 1, end + 4))) return end + 1;
  if (isShortForm(run)) return end;
  return /^(?:[B-DF-HJ-NP-TV-XZ]{2,}|[A-Z]{2,}(?=s))s?$/.test(run) ? end : 0;
}

/** Returns the token of a lower-case word. Most words are short, and few short words lack a vowel, as km does. */
function smallToken(text: string, start: number, end: number): RawToken {
  const key = text.slice(start, end);
  return end - start > LONGEST || (end - start <= 4 && isShortForm(key))
    ? { start, end, kind: 'skipped', key: '' }
    : { start, end, kind: 'word', key };
}

/**
 * Returns the token of a run that may not be a word: a run with a capital, with a digit, or with a sign after it that
 * continues the run. `addresses` is the offset at which the next address begins.
 */
function anyToken(text: string, start: number, end: number, isSmall: boolean, addresses: number): RawToken {
  const run = text.slice(start, end);
  const abbreviated = isWord(run) ? endOfAbbreviation(text, run, end) : end;
  // The full stops of an abbreviation do not extend into an address: r.https://tarnquay.example.
  if (abbreviated > 0) return { start, end: Math.min(abbreviated, addresses), kind: 'skipped', key: '' };
  if (ownsApostrophe(text, start, end)) return { start, end: end + 1, kind: 'word', key: '' };
  return { start, end, kind: 'word', key: isSmall ? run : '' };
}

/**
 * Returns whether an apostrophe belongs to the word before it. The apostrophe after a plural owner does (the gulls'
 * nests). A closing quotation mark does not (‘the gulls’ cried Otto). The sign is a quotation mark when a quotation was
 * opened in this paragraph and has not been closed since.
 */
function ownsApostrophe(text: string, start: number, end: number): boolean {
  const mark = text[end];
  if ((mark !== "'" && mark !== '’') || !/s/i.test(text[end - 1]!)) return false;
  if (!/^\s+\p{Ll}/u.test(text.slice(end + 1, end + 12))) return false;
  const near = text.slice(Math.max(start - 400, 0), start);
  const before = near.slice(near.lastIndexOf('\n\n') + 1);
  const opened = before.search(/(?<![\p{L}\p{N}])['‘](?=\p{L})[^'’]*(?:['’](?=\p{L})[^'’]*)*$/u);
  return opened === -1;
}
