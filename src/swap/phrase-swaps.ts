import type { Piece } from './cut-words.ts';
import { placeOf } from './fit-place.ts';
import type { SwapTable } from './open-swaps.ts';
import { correctArticle, likeCapitals } from './put-in-form.ts';
import type { Edit } from './types.ts';
import { sharesOfForm } from './weigh-readings.ts';

/** Plainer words for the words from `start` to `end` of a sentence. An empty text removes the words. */
export interface PhraseSwap {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** The new words. Empty where words are only removed. */
  readonly comes: string;
  readonly article: Edit | null;
}

/** The content of `phrase-swaps.json`. `src/data/source/README.md` describes it. */
export interface PhraseLists {
  /** Words that several rules need beside theirs, as regular expressions. */
  readonly classes: Readonly<Record<string, string>>;
  readonly rules: readonly PhraseRow[];
  /** The digits of the numbers from two to below a hundred that are single words. */
  readonly numbers: Readonly<Record<string, string>>;
}

interface PhraseRow {
  readonly before: string;
  readonly says: string;
  readonly after: string;
  readonly swaps: string;
}

/** The lists, ready for looking up words. */
export interface PhraseRules {
  /** The rules, by each word in them. */
  readonly byWord: ReadonlyMap<string, readonly PhraseRule[]>;
  readonly numbers: ReadonlyMap<string, string>;
}

interface PhraseRule {
  readonly says: RegExp;
  readonly before: Neighbours;
  readonly after: Neighbours;
  /** The texts that replace the phrase, best first. `-` removes the phrase. */
  readonly swaps: readonly string[];
}

/** The neighbours that the words must have, or must not have. */
interface Neighbours {
  readonly fits: (words: string) => boolean;
  readonly isNoun: boolean;
}

const LONGEST = 5;
const SEEN = 3;
const LEAVE_OUT = '-';
/** Degree words, which belong to the next word. In “most clearly”, “most” is no longer the same without “clearly”. */
const TELLS_DEGREE = /^(so|too|as|how|more|most|less|least)$/;
const DENIES = /^(not|never|no|nor|hardly|without|only|cannot|.*n't)$/;

/** Reads the lists. This takes some milliseconds. */
export function readPhraseRules({ rules, classes, numbers }: PhraseLists): PhraseRules {
  const byWord = new Map<string, PhraseRule[]>();
  for (const { before, says, after, swaps } of rules.flatMap(formsOf)) {
    const rule = {
      says: new RegExp(`^(?:${says})$`),
      before: readNeighbours(before, classes, (words) => `(?:^|.* )(?:${words})$`),
      after: readNeighbours(after, classes, (words) => `^(?:${words})(?: |$)`),
      swaps: swaps.split('|'),
    };
    for (const word of new Set(says.match(/[a-z']+|,/g)))
      byWord.set(word, [...(byWord.get(word) ?? []), rule]);
  }
  return { byWord, numbers: new Map(Object.entries(numbers)) };
}

/** Returns one rule for each form of the words: raise/raises with the swap lift/lifts gives two rules. */
function formsOf({ says, swaps, ...beside }: PhraseRow): PhraseRow[] {
  const inForm = (text: string, i: number): string => text.split('/')[i] ?? text;
  return says.split('/').map((form, i) => ({
    ...beside,
    says: form,
    swaps: swaps
      .split('|')
      .map((swap) => inForm(swap, i))
      .join('|'),
  }));
}

function readNeighbours(
  source: string,
  classes: PhraseLists['classes'],
  frame: (words: string) => string,
): Neighbours {
  if (source === '' || source === '{noun}') return { fits: () => true, isNoun: source !== '' };
  if (source.startsWith('{noun} '))
    return { ...readNeighbours(source.slice(7), classes, frame), isNoun: true };
  if (source === '^') return { fits: (words) => words === '', isNoun: false };
  const isNot = source.startsWith('!');
  const words = (isNot ? source.slice(1) : source).replace(
    /\{([a-z]+)\}/g,
    (_, name) => `(?:${classes[name]})`,
  );
  const pattern = new RegExp(frame(words));
  return { fits: (beside) => pattern.test(beside) !== isNot, isNoun: false };
}

/**
 * Finds plainer words for the phrase at `at`, by the rules of `phrase-swaps.json` and for numbers: “in order to”
 * becomes “to”, “upon the deck” becomes “on”, “a magnificent ship” becomes “a ship”, “twelve boats” becomes “12
 * boats”. If `isBound` is true, rules for that single word do not apply.
 */
export function findPhraseSwaps(
  sentence: string,
  pieces: readonly Piece[],
  at: number,
  isBound: boolean,
  table: SwapTable,
  { byWord, numbers }: PhraseRules,
): PhraseSwap[] {
  const rules = byWord.get(pieces[at]!.lower) ?? [];
  const found: PhraseSwap[] = isBound ? [] : numberAt(sentence, pieces, at, table, numbers);
  for (const { says, before, after, swaps } of rules) {
    for (let length = LONGEST; length > (isBound ? 1 : 0); length--) {
      for (let first = Math.max(0, at - length + 1); first <= at; first++) {
        const words = pieces.slice(first, first + length);
        const match = words.length === length && says.exec(joined(words));
        if (!match) continue;
        const next = first + length;
        if (!before.fits(joined(pieces.slice(Math.max(0, first - SEEN), first)))) continue;
        if (!after.fits(joined(pieces.slice(next, next + SEEN)))) continue;
        if (after.isNoun && !isNounNext(pieces, next, table)) continue;
        for (const swap of swaps) {
          const text = swap.replace(/\$(\d)/g, (_, group) => match[Number(group)] ?? '');
          const swapped =
            text === LEAVE_OUT
              ? leaveOut(sentence, pieces, first, next, table)
              : putIn(sentence, pieces, first, next, text, table);
          if (swapped) found.push(swapped);
        }
      }
    }
  }
  return found;
}

/** Returns whether a noun follows, or an adjective before a noun: “his beloved ship”, not “his beloved met him”. */
function isNounNext(pieces: readonly Piece[], next: number, table: SwapTable): boolean {
  if (!placeOf(pieces, next - 1, table).isBeforeNoun) return false;
  const shares = sharesOfForm(pieces[next]!.lower, table);
  return shares === null || shares[0]! + shares[2]! >= 0.5;
}

const joined = (pieces: readonly Piece[]): string => pieces.map(({ lower }) => lower).join(' ');

/**
 * Past forms that are not participles. “he paid heed” becomes “he took heed”, but “he had paid heed” does not become
 * “he had took heed”.
 */
const PAST_ALONE =
  /^(?:ate|became|began|blew|broke|came|chose|did|drew|drove|fell|gave|grew|knew|ran|rose|sang|saw|shook|spoke|stole|swam|threw|took|was|went|were|wore|wrote)\b/;
const HELPS =
  /(?:^| )(?:have|has|had|having|is|are|was|were|be|been|being|get|gets|got|\w+'(?:ve|re|s|d)|\w+n't)(?: (?:not|never|just|already|also|\w+ly))?$/;

function putIn(
  sentence: string,
  pieces: readonly Piece[],
  first: number,
  next: number,
  text: string,
  table: SwapTable,
): PhraseSwap | null {
  if (PAST_ALONE.test(text) && HELPS.test(joined(pieces.slice(Math.max(0, first - 3), first)))) return null;
  const { start } = pieces[first]!;
  const { end } = pieces[next - 1]!;
  const isCapital = /^\p{Lu}/u.test(sentence.slice(start));
  return {
    start,
    end,
    text: isCapital ? likeCapitals(text, sentence.slice(start, start + 1)) : text,
    comes: text,
    article: correctArticle(sentence, pieces[first - 1], text, table.takesOtherArticle),
  };
}

/** Removes the words. Leaves one blank or punctuation mark in their place, and a capital at the start of the sentence. */
function leaveOut(
  sentence: string,
  pieces: readonly Piece[],
  first: number,
  next: number,
  table: SwapTable,
): PhraseSwap | null {
  const [before, after] = [pieces[first - 1], pieces[next]];
  const { start } = pieces[first]!;
  const { end } = pieces[next - 1]!;
  // A negation may apply to exactly this word: “never seriously hurt”, “not very good”.
  const isDenied = pieces.slice(Math.max(0, first - SEEN), first).some(({ lower }) => DENIES.test(lower));
  if (after === undefined || after.lower === '…' || isDenied || TELLS_DEGREE.test(before?.lower ?? ''))
    return null;
  const isWord = /^[\p{L}\d]/u.test(after.lower);
  if (/^\p{Lu}/u.test(sentence.slice(start)) || before === undefined) {
    // “Clearly, it sank” becomes “It sank”. “Gently place the lid” stays, because the adverb is part of the order.
    if (!isWord || (next === first + 1 && /ly$/.test(pieces[first]!.lower))) return null;
    const text = sentence.slice(after.start, after.end);
    const capital = text.charAt(0).toUpperCase() + text.slice(1);
    return { start, end: after.end, text: capital, comes: '', article: null };
  }
  const article = correctArticle(sentence, before, after.lower, table.takesOtherArticle);
  const isApart = /\s$/.test(sentence.slice(0, start));
  if (!isWord) return isApart ? { start: before.end, end, text: '', comes: '', article: null } : null;
  if (article !== null && isApart) return { start, end: after.start, text: '', comes: '', article };
  return { start, end: after.start, text: isApart ? '' : ' ', comes: '', article: null };
}

/**
 * Writes a number from two to below a hundred in digits: “two lamps” becomes “2 lamps”. The number must be within a
 * sentence and before the counted noun.
 */
function numberAt(
  sentence: string,
  pieces: readonly Piece[],
  at: number,
  table: SwapTable,
  numbers: PhraseRules['numbers'],
): PhraseSwap[] {
  const { lower, start, end } = pieces[at]!;
  const digits = numbers.get(lower);
  const [before, after] = [pieces[at - 1], pieces[at + 1]];
  if (digits === undefined || before === undefined || after === undefined) return [];
  const isNumber = ({ lower: word }: Piece): boolean =>
    numbers.has(word) || /^(\d.*|one|hundred|thousand|million|billion|half|point|and|or|to|[-–])$/.test(word);
  // All numbers in a sentence are written in the same way.
  if (pieces.some((piece) => piece !== pieces[at] && numbers.has(piece.lower))) return [];
  if (isNumber(before) || isNumber(after) || !/^\p{Ll}/u.test(sentence.slice(start))) return [];
  if (!placeOf(pieces, at, table).isBeforeNoun || !countsThings(pieces, at)) return [];
  return [{ start, end, text: digits, comes: digits, article: null }];
}

const PLURAL = /^(?:people|men|women|children|feet|teeth|mice|geese|sheep|fish|deer|more|others|\w*[^su]s)$/;

/**
 * Returns whether the number counts things: “two pink lines”, “two more”. Counter-examples: “two dimensional”, “the two
 * most of all”.
 */
function countsThings(pieces: readonly Piece[], at: number): boolean {
  const next = pieces.slice(at + 1, at + 4).map(({ lower }) => lower);
  const mark = next.findIndex((word) => !/^[\p{L}]/u.test(word));
  return next[0] !== 'most' && next.slice(0, mark < 0 ? 3 : mark).some((word) => PLURAL.test(word));
}
