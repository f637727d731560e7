import { commonWords } from './common-words.ts';
import { readWords, withoutName } from './read-words.ts';

/** The words of a by-sight list. It is not `sure` if the text contains more than words. */
export interface SightList {
  readonly words: readonly string[];
  readonly sure: boolean;
}

/** Remarks about a list that are beside its words and remove no word from it: "(new)", "etc", "x 3". */
const remark =
  /^(?:(?:\p{N}+(?:st|nd|rd|th)?|x|grades?|years?|terms?|units?|old|previous|the|taught|so far|kindergarten|new|again|etc|cont|continued|continue|review|reviewed|words?|cards?|flash ?cards?|heart|sight|by|as a whole|whole|only|irregular|decodable|optional|all|more|weekly|daily|list|set|from|see|homophones?|tricky|part|both|sounds?|meanings?|first|second|if|time|ready|needed)[\s.,:-]*)*$/iu;

/** Words that tell what is done with a list, or where it continues. A list without commas contains no such words. */
const doing =
  /\b(?:words|review(?:s|ed|ing)?|practi[cs](?:e|ing)|check(?:s|ed)?|tests?|quiz(?:zes)?|assess(?:ment)?|flash ?cards?|cards|etc|plus|lists?|spelling|examples?|decodable|dictation|game|song|homework|previous|catch-?up)\b/iu;

/**
 * Reads the words of a by-sight list with or without its name: `Sight words: the, of and to` has the, of and to. Text
 * in brackets, after a dash or after a full stop is a remark about the list. A piece of several words between two
 * commas contains words and a remark. The list is then not sure, unless the remark is a well-known one.
 */
export function readSightList(text: string): SightList {
  let sure = true;
  const doubt = (part: string) => {
    // "(they break the rule)" is not a list.
    const list = part.includes(',') || part.trim().split(/\s+/).length < 3;
    if (list && !remark.test(part.trim())) sure = false;
    return ' ';
  };
  let body = withoutName(text);
  // "all first grade sight words" names no words.
  if (body !== text && text.startsWith(body) && remark.test(body.trim())) return { words: [], sure: true };
  if (/^[\s([{]*\p{L}[^()[\]]*\p{L}/u.test(body.replace(/^\s*[([].*?[)\]]\s*$/u, '')))
    body = body.replace(/[([]([^()[\]]*)[)\]]/gu, (whole, inside: string, at: number) =>
      /\p{L}/u.test(body.slice(0, at)) ? doubt(inside) : whole,
    );
  body = cutTail(body, /(?<=\p{L}['’]?)[.!?]\s+(?=\p{L})/u, doubt);
  body = cutTail(body, /\s\*\s?(?=\p{L})/u, doubt);
  if (/,/.test(body)) {
    // In "Sight words are was, of" the verb is not in the list.
    body = body.replace(/^\s*(?:are|is|include)\s+(?=\p{L})/iu, '');
    const dashes = body.match(/\s[-–—]+\s/g)?.length ?? 0;
    if (dashes === 1) body = cutTail(body, /\s[-–—]+\s/u, doubt);
    const colon = body.search(/\p{L}\s?:/u);
    if (colon > 0) {
      const from = Math.max(body.lastIndexOf(',', colon), body.lastIndexOf(';', colon));
      // "Herons: the, to"
      if (from < 0) body = body.slice(body.indexOf(':', colon) + 1);
      else {
        sure = false;
        // In "said, of Decodable: ship" a word of the list is before the name.
        const [first = '', second] = body.slice(from + 1, colon + 1).match(/[\p{L}\p{M}'’-]+/gu) ?? [];
        body = `${body.slice(0, from)}, ${second === undefined ? '' : first}`;
      }
    }
    const pieces = body.split(/[,;/•·\n&]+/u).map((piece) => piece.trim());
    const kept = pieces.flatMap((piece, i) => {
      const own = piece.replace(/^(?:and|&)\s+(?=\p{L})/iu, '');
      const words = own.match(/[\p{L}\p{M}'’-]+/gu) ?? [];
      if (words.length < 2) return [own];
      // "and" may join the last two words: "of and to".
      if (words.length === 3 && /^(?:and|or)$/i.test(words[1]!)) return [words[0]!, words[2]!];
      if (i < pieces.length - 1 || words.length < 4) {
        if (words.every(isCommon) && !doing.test(own)) return [own];
      }
      const [first = '', ...others] = words;
      doubt(others.join(' '));
      if (isCommon(first) || remark.test(others.join(' '))) return [first];
      return doing.test(own) || words.length > 2 ? [] : [own];
    });
    return { words: readWords(kept.join(', ')), sure };
  }
  const pair = readPair(body);
  if (pair !== null) return pair;
  const words = readWords(body);
  if (tellsOfWords(words, body)) return { words: [], sure: true };
  return { words, sure: sure && !doing.test(body) };
}

/** Whether a text is a sentence about words: "Sight words get added to the ring". */
function tellsOfWords(words: readonly string[], body: string): boolean {
  const known = words.filter(isCommon).length;
  return (
    words.length > 4 && known < words.length * 0.6 && /\b(?:to|the|in|on|of|as|each|every)\b/i.test(body)
  );
}

/** Reads two words joined by "and": "people and could" are two words. "the and is" may be three. */
function readPair(body: string): SightList | null {
  const [, first = '', second = ''] = /^\W*([\p{L}'’]+)\s+(?:and|&)\s+([\p{L}'’]+)\W*$/iu.exec(body) ?? [];
  if (second === '') return null;
  const sure = ![first, second].every((one) => earliest.has(one.toLowerCase()));
  return { words: readWords(`${first}, ${second}`), sure };
}

/** The words that are mostly taught in the same weeks as `and` (common practice, no source). */
const earliest: ReadonlySet<string> = new Set(
  'a i the to is see my like we go can he she me you it in on at am an no up for look little said big'.split(
    ' ',
  ),
);

const isCommon = (word: string) => commonWords.has(word) || commonWords.has(word.toLowerCase());

function cutTail(body: string, at: RegExp, doubt: (tail: string) => string): string {
  const found = at.exec(body);
  if (found === null || !/\p{L}/u.test(body.slice(0, found.index))) return body;
  doubt(body.slice(found.index + found[0].length));
  return body.slice(0, found.index);
}
