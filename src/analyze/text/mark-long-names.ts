import { isHomograph } from '../homographs/is-homograph.ts';
import {
  isInCapitals,
  keyOfAlone,
  keyOfLeading,
  keyOfPart,
  shownOfKey,
  splitKey,
} from '../homographs/word-key.ts';
import { standsBeforeName } from './abbreviations.ts';
import { isGrammarWord } from './is-grammar-word.ts';
import { LONGEST_HEADLINE } from './is-headline.ts';
import type { RawToken } from './match-tokens.ts';
import {
  BEFORE_FEASTS,
  DATES,
  FEASTS,
  FORMS_OF_ADDRESS,
  LABELS,
  NO_OPENERS,
  PLACES,
  ROLES,
  SURNAMES,
} from './name-parts.ts';

/** The number of slashes that separate the makers of a picture. */
const CREDIT = 2;

/** Words after which a single capital makes no name: a verb follows “to”, and a kind of thing follows “a” (a Fox). */
const NO_NAME_AFTER = /^(?:to|an?)$/;

/** An initialism in a name: BBC News, the US Navy, the T4 Ferry. */
const INITIALISM = /^(?:[A-Z]{2,}|(?:[A-Z]\.){2,}|[A-Z]+\d+)$/;

/**
 * Marks the words of a name that has several words: Tarn Quay School, University of Skarvik, Mr. Falk.
 * Capitals side by side make such a name, without the form of address before it (Captain Falk). A single capital makes
 * such a name in these places:
 * - after a form of address, an initialism (US Navy) or the word “The” inside the sentence (saw The Crown)
 * - after a capital that opens the sentence (Rough Water is calm; not Both Boats)
 * - before a number (Pier 9)
 * Nothing is marked if no other word has lower-case letters, because the capitals may then belong to a label (Customer
 * Service Desk). The sentence is the tokens from `from` to before `to`. The keys of these tokens say which capitals are
 * not explained.
 */
export function markLongNames(text: string, tokens: readonly RawToken[], from: number, to: number): void {
  const isLabel = to - from <= LONGEST_HEADLINE && !hasSmallWord(tokens, from, to);
  for (let at = from + 1, end = at; at < to; at = end) {
    end = at + 1;
    if (!isKept(tokens[at]!)) continue;
    while (end < to) {
      const next = nextOfName(text, tokens, end, to);
      if (next === 0) break;
      end = next;
    }
    const before = tokens[at - 1]!;
    const last = tokens[end - 1]!;
    const isPlace = PLACES.has(smallOf(last));
    // On a line without lower-case letters only a place such as Low Tide City, TQ is surely a name. Wilma Falk is a
    // name where Wilma is no common word.
    if (isLabel && !(isPlace && end - at > 1 && /^, [A-Z]{2}\b/.test(text.slice(last.end)))) {
      if (isOpening(before) && isBlank(text, before, tokens[at]!)) markLeading(before);
    } else markRun(text, tokens, from, at, end, to, isPlace);
  }
}

/**
 * Marks the name in a run of capitals from `at` to before `end`. `isPlace` is true if the last word of the run belongs
 * to the name of a place.
 */
function markRun(
  text: string,
  tokens: readonly RawToken[],
  from: number,
  at: number,
  end: number,
  to: number,
  isPlace: boolean,
): void {
  const before = tokens[at - 1]!;
  const isTitled = isTitle(text, tokens, from, at - 1);
  const isWhole = isPlace || isTitled || isFeast(tokens, end - 2, end - 1);
  const first = isWhole ? at : behindAddress(tokens, at, end);
  // In the White House Press Secretary, a name comes before the form of address.
  const house = behindPlace(tokens, at, first);
  if (house - at > (isAddress(text, before) ? 0 : 1)) markParts(text, tokens, at, house);
  if (first === end || isRole(tokens, at, end)) return;
  if (first > at || isTitled || (isBlank(text, before, tokens[at]!) && isAddress(text, before)))
    markParts(text, tokens, isTitle(text, tokens, from, first - 1) ? first - 1 : first, end);
  else markPlainRun(text, tokens, from, at, end, to, isPlace);
}

/**
 * Marks a run without a form of address. The run is a name if it has several words, or if a number after it or the word
 * before it shows this.
 */
function markPlainRun(
  text: string,
  tokens: readonly RawToken[],
  from: number,
  at: number,
  end: number,
  to: number,
  isPlace: boolean,
): void {
  const before = tokens[at - 1]!;
  const token = tokens[at]!;
  const isOpened = isOpening(before) && (isBlank(text, before, token) || isJoined(text, before, token));
  if (isOpened && !isPlace) markLeading(before);
  let first = isOpened && isPlace ? at - 1 : at;
  if (isTitle(text, tokens, from, first - 1)) first--;
  const isName =
    end - first > 1 || isNumbered(text, tokens, end, to) || (isOpened && !NO_OPENERS.has(smallOf(before)));
  if (isName) markParts(text, tokens, first, end);
  else if (isAlone(text, tokens, at)) token.key = keyOfAlone(token.key);
}

/**
 * Returns whether a capital after a lower-case word or a number may be a name. Returns false for a person's office (the
 * new Captain), a label (see Figure) and a word that a hyphen joins (the Non-stop list).
 */
function isAlone(text: string, tokens: readonly RawToken[], at: number): boolean {
  const before = tokens[at - 1]!;
  const token = tokens[at]!;
  const small = smallOf(token);
  const word = small.replace(/'s?$/, '');
  return (
    splitKey(token.key).capital === 'mid' &&
    /^(?:\p{Ll}[\p{L}’']|\d)/u.test(text.slice(before.start, before.end)) &&
    !NO_NAME_AFTER.test(before.key) &&
    text.slice(before.end, token.start) === ' ' &&
    text[token.end] !== '-' &&
    !FORMS_OF_ADDRESS.has(word) &&
    !LABELS.has(word) &&
    // The key of a homograph has room only for its reading.
    !isHomograph(small)
  );
}

/**
 * Marks the names in a picture's credit, which slashes separate: Wilma Falk/Tide Pictures/Skarvik News; not Rope/Net
 * alone, nor Mon/Wed/Fri. Most texts have no slash at all, so `hasSlash` is determined once per text.
 */
export function markCredit(
  text: string,
  tokens: readonly RawToken[],
  from: number,
  to: number,
  hasSlash: boolean,
): void {
  for (let at = from, end = at; at < to && hasSlash; at = end) {
    let slashes = 0;
    end = at + 1;
    if (!isCapitalised(text, tokens[at]!)) continue;
    for (; end < to && isCapitalised(text, tokens[end]!); end++) {
      const between = text.slice(tokens[end - 1]!.end, tokens[end]!.start);
      if (between === '/') slashes++;
      else if (between !== ' ') break;
    }
    if (slashes >= CREDIT) markParts(text, tokens, at, end);
  }
}

/** Returns whether a word has a capital and is no form of a date: Falk, iStock. */
function isCapitalised(text: string, { start, end }: RawToken): boolean {
  const shown = text.slice(start, end);
  return end - start > 3 && /^\p{L}*\p{Lu}\p{L}+$/u.test(shown) && !DATES.has(shown.toLowerCase());
}

function isFeast(tokens: readonly RawToken[], before: number, day: number): boolean {
  return BEFORE_FEASTS.has(smallOf(tokens[before]!)) && DATES.has(smallOf(tokens[day]!));
}

/** Returns whether a number, a letter or initials follow a capital: Pier 9, Area X, Harbour ID; not Step 2. */
function isNumbered(text: string, tokens: readonly RawToken[], end: number, to: number): boolean {
  const last = tokens[end - 1]!;
  const next = tokens[end];
  if (end >= to || !isBlank(text, last, next!)) return false;
  return /^(?:\d{1,4}|[A-Z]{1,4})$/.test(text.slice(next!.start, next!.end)) && !LABELS.has(smallOf(last));
}

/**
 * Returns the index after the last form of address in a run. Returns `from` if the run has no form of address, as in
 * Wilma King and Ines Falk.
 */
function behindAddress(tokens: readonly RawToken[], from: number, end: number): number {
  for (let at = end; at > from; at--) {
    const shown = smallOf(tokens[at - 1]!);
    const word = at === end ? shown.replace(/'s$/, '') : shown;
    const isSurname = SURNAMES.has(word) && at - 1 > from && (at === end || !isKept(tokens[at]!));
    if (FORMS_OF_ADDRESS.has(word) && !isSurname) return at;
  }
  return from;
}

/** Behind the last of the tokens that ends a place's name; `from` where none does. Senate President Falk has two before the name. */
function behindPlace(tokens: readonly RawToken[], from: number, end: number): number {
  for (let at = end; at > from; at--) if (PLACES.has(smallOf(tokens[at - 1]!))) return at;
  return from;
}

function isRole(tokens: readonly RawToken[], from: number, end: number): boolean {
  for (let at = from; at < end - 1; at++)
    if (ROLES.has(smallOf(tokens[at]!)) && tokens[at + 1]!.key === 'of') return true;
  return false;
}

/** Returns the index after the word that continues a name which has reached `end`; 0 where the name does not continue. */
function nextOfName(text: string, tokens: readonly RawToken[], end: number, to: number): number {
  const last = tokens[end - 1]!;
  const next = tokens[end]!;
  const isDoubled = isKept(next) && isKept(last) && isJoined(text, last, next);
  if (!isBlank(text, last, next) && !isDoubled) return 0;
  if (DATES.has(smallOf(next)) && !isFeast(tokens, end - 1, end)) return 0;
  // Falk's House is one name; Falk's Biscuit is two.
  if (/'s?$/.test(last.key))
    return isKept(next) && (PLACES.has(smallOf(next)) || FEASTS.has(smallOf(next))) ? end + 1 : 0;
  if (isKept(next) || isGrammarInCapital(text, next)) return end + 1;
  if (next.key === 'and') return isJoinedByAnd(text, tokens, end, to) ? end + 2 : 0;
  return next.key === 'of' ? behindOf(text, tokens, end, to) : 0;
}

/**
 * Returns the index after the capital that follows “of” or “of the” in a name: University of Skarvik, Bay of the Gulls.
 * Returns 0 if no capital follows: the Bay of gulls.
 */
function behindOf(text: string, tokens: readonly RawToken[], of: number, to: number): number {
  const after = tokens[of + 1]?.key === 'the' ? of + 2 : of + 1;
  for (let at = of + 1; at <= after; at++)
    if (at >= to || !isBlank(text, tokens[at - 1]!, tokens[at]!)) return 0;
  return isKept(tokens[after]!) ? after + 1 : 0;
}

/** Returns whether “and” joins two capitals to one name: Salt and Rope; not Monday and Tuesday. */
function isJoinedByAnd(text: string, tokens: readonly RawToken[], and: number, to: number): boolean {
  if (and + 1 >= to || DATES.has(smallOf(tokens[and - 1]!))) return false;
  const after = tokens[and + 1]!;
  return isKept(after) && isBlank(text, tokens[and]!, after) && !FORMS_OF_ADDRESS.has(smallOf(after));
}

function markLeading(token: RawToken): void {
  token.key = keyOfLeading(shownOfKey(token.key));
}

function markParts(text: string, tokens: readonly RawToken[], first: number, end: number): void {
  for (let at = first; at < end; at++) {
    const token = tokens[at]!;
    if (isKept(token) || isOpening(token)) token.key = keyOfPart(shownOfKey(token.key));
    else if (isGrammarInCapital(text, token)) token.key = keyOfPart(text.slice(token.start, token.end));
  }
}

function hasSmallWord(tokens: readonly RawToken[], from: number, to: number): boolean {
  for (let at = from; at < to; at++) {
    const { kind, key } = tokens[at]!;
    if (kind === 'word' && key.length > 1 && splitKey(key).capital === 'small') return true;
  }
  return false;
}

function isKept({ kind, key }: RawToken): boolean {
  if (kind !== 'word') return false;
  const { capital } = splitKey(key);
  return capital === 'mid' || capital === 'part';
}

function isOpening({ kind, key }: RawToken): boolean {
  return kind === 'word' && splitKey(key).capital === 'opens';
}

function isAddress(text: string, { start, end, kind, key }: RawToken): boolean {
  const shown = text.slice(start, end);
  if (kind === 'skipped') return standsBeforeName(shown.replace(/\.$/, '')) || INITIALISM.test(shown);
  if (isInCapitals(shown)) return true;
  return splitKey(key).capital === 'opens' && FORMS_OF_ADDRESS.has(smallOf({ key }));
}

/**
 * Returns whether a word of grammar has a capital that only a name explains, such as the name of a film or a house: saw
 * The Crown. Returns false at the start of the sentence.
 */
function isTitle(text: string, tokens: readonly RawToken[], from: number, at: number): boolean {
  if (at <= from || !isGrammarInCapital(text, tokens[at]!)) return false;
  return isBlank(text, tokens[at - 1]!, tokens[at]!) && isBlank(text, tokens[at]!, tokens[at + 1]!);
}

/** Returns whether a word of grammar has a capital. I and shouted words do not count. */
function isGrammarInCapital(text: string, { start, end, kind, key }: RawToken): boolean {
  return (
    kind === 'word' && end - start > 1 && isGrammarWord(key) && /^[A-Z][a-z]+$/.test(text.slice(start, end))
  );
}

function isBlank(text: string, { end }: RawToken, { start }: RawToken): boolean {
  return start === end + 1 && /\s/.test(text[end]!);
}

/** Returns whether two tokens are parts of one name: Falk & Daughters, Skarvik-Lund. */
function isJoined(text: string, { end }: RawToken, { start }: RawToken): boolean {
  return /^(?:-| & )$/.test(text.slice(end, start));
}

function smallOf({ key }: Pick<RawToken, 'key'>): string {
  return splitKey(key).word.toLowerCase();
}
