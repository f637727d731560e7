import type { Chunk } from './clause-chunk.ts';
import { commonWords } from './common-words.ts';
import type { ImportedItem } from './imported-sequence.ts';
import type { Phrase } from './phrases.ts';

/** An item. It has headings if it has no letters of its own: "Digraphs". A list may follow such headings. */
export interface ReadItem extends ImportedItem {
  readonly headings: readonly Phrase[];
  /** Whether the item uses technical words in addition to any letters. */
  readonly named: boolean;
  /** Whether some of the item's words were not understood. */
  readonly partly?: boolean;
}

/** A heading with more patterns than this only announces letters of its family in a later sentence. */
const MOST_MEANT = 2;

/**
 * Drops headings whose patterns are named by later letters: "Vowel teams, round one will be ai, ee", "Started magic e.
 * Only a_e".
 */
export function dropNames(items: readonly ReadItem[]): readonly ReadItem[] {
  let dropped = false;
  const read = items.map((one, i): ReadItem => {
    if (one.headings.length !== 1 || one.patterns.length <= MOST_MEANT) return one;
    const { within, keeps } = one.headings[0]!;
    const later = items
      .slice(i + 1, i + 40)
      .filter(({ headings, patterns }) => headings.length === 0 && patterns.length > 0);
    const own = later.filter(({ patterns }) => patterns.every((id) => within!.has(id)));
    if (own.length === 0 || own.length < later.length || keeps.length > 0) return one;
    dropped = true;
    return { ...one, status: 'ignored', patterns: [] };
  });
  return dropped ? guesses(read) : items;
}

/** Drops vowels that only name the sounds of letters after them: "Long a and long i with silent e (a_e, i_e)". */
export function withoutVowelNames(items: readonly ReadItem[]): readonly ReadItem[] {
  return items.map((one, i): ReadItem => {
    const [heading] = one.headings;
    const vowel =
      one.headings.length === 1 && one.patterns.length > 0 && one.patterns.every((id) => /^long-/.test(id));
    if (!vowel) return one;
    const spelled = items.slice(i + 1).filter(({ headings }) => headings.length === 0);
    return spelled.some(({ patterns }) => patterns.some((id) => heading!.within?.has(id) === true))
      ? { ...one, status: 'ignored', patterns: [], bySight: [] }
      : one;
  });
}

/** Turns the items of a running sentence into guesses. */
export function guesses(items: readonly ReadItem[]): readonly ReadItem[] {
  return items.map((one) => (one.status === 'matched' ? { ...one, status: 'guessed' } : one));
}

/** Words that may name taught content in an otherwise unknown text. */
const mayTeach =
  /["“”:([?]|\b(?:words?|famil|patterns?|sounds?|spell|rules?|blends?|letters?|syllab|endings?|suffix|prefix|vowels?|consonants?|exceptions?|also|plus|etc|cluster|digraph|trigraph|root|chunk|rime|[ao]ught?\b)/i;

/**
 * Drops comments beside letters that say nothing about the content taught: "L, K and W, taught in that order". The
 * other items then become guesses.
 */
export function withoutComments(items: readonly ReadItem[]): readonly ReadItem[] {
  const letters = items.some(({ patterns, headings }) => patterns.length > 0 && headings.length === 0);
  if (!letters) return items;
  const isComment = ({ status, text }: ReadItem) => {
    const words = text.match(/[\p{L}'’]+/gu) ?? [];
    return (
      status === 'unknown' &&
      !mayTeach.test(text) &&
      words.length > 1 &&
      // A short word may be unknown letters.
      words.every(
        (word) => word.length > 3 || commonWords.has(word.toLowerCase()) || /^(?:wk|wks|min|day)$/.test(word),
      )
    );
  };
  // The letter may be an initial or belong to a remark: "R is not rolled".
  const asked = items.some(
    ({ status, text }) => status === 'unknown' && (text.match(/\p{L}+/gu) ?? []).length > 1,
  );
  if (asked && !items.some(isComment))
    return items.map(
      (one): ReadItem =>
        one.status === 'matched' && one.patterns.length === 1 && /^\p{L}\.?$/u.test(one.text)
          ? { ...one, status: 'guessed' }
          : one,
    );
  return items.some(isComment)
    ? items.map(
        (one): ReadItem =>
          isComment(one)
            ? { ...one, status: 'ignored' }
            : one.status === 'matched'
              ? { ...one, status: 'guessed' }
              : one,
      )
    : items;
}

/** Whether a clause names several types of syllables, or says that its words are long. No vowels are meant then. */
export function namesTypes(chunks: readonly Chunk[]): boolean {
  const named = chunks.flatMap(({ phrases }) => phrases.flatMap(({ ids }) => ids));
  const types = new Set(named.filter((id) => /^(?:type-|consonant-le$|syllables-|divide-)/.test(id)));
  return types.size > 1;
}

/**
 * Removes vowels from types of syllables. "Closed and open syllables" teaches the types. "Open syllables" alone may
 * mean its vowels too, so it becomes a guess.
 */
export function withoutVowels(
  read: ReadItem,
  { phrases, spelled, examples }: Chunk,
  types: boolean,
): ReadItem {
  const type = read.patterns.find((id) => id === 'type-open' || id === 'type-vce');
  if (type === undefined || spelled.length > 0 || !phrases.some(({ ids }) => ids.includes(type))) return read;
  const long = examples.length > 0 && examples.every((word) => /[aeiouy][^aeiouy]+[aeiouy]/.test(word));
  if (types || long)
    return {
      ...read,
      patterns: read.patterns.filter((id) => /^(?:type-|syllables-|consonant-le|divide-)/.test(id)),
    };
  const vowels = read.patterns.length > 1;
  return vowels && read.status === 'matched' ? { ...read, status: 'guessed' } : read;
}
