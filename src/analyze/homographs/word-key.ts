import type { WordKey } from '../types.ts';

/**
 * The way a word is written in its place:
 *
 * - `small`: in lower case
 * - `mid`: with a capital that the place does not explain (the dog Duke)
 * - `opens`: with a capital that the place explains, at the start of a sentence or in a headline
 * - `leads`: like `opens`, before another capital that may belong to the same name (Wilma Falk ran; not: Then Bram ran)
 * - `part`: beside other capitals, as part of a longer name (Tarn Quay School, Mr. Falk)
 * - `alone`: after a small word or a number (all of the Tide; not: to Stop)
 * - `all`: in capitals, in a text that is not all in capitals (NATO, STOP)
 */
export type Capital = 'small' | 'mid' | 'opens' | 'leads' | 'part' | 'alone' | 'all';

/** The parts of a key: the word, its chosen reading, and how it is written. */
export interface KeyParts {
  /**
   * The word in lower case if it is written so or its place explains the capital. Otherwise the word as written
   * (`Duke`, `NATO`).
   */
  readonly word: string;
  /** Null if no reading is chosen. */
  readonly reading: number | null;
  readonly capital: Capital;
}

const MARK = '#';
const OPENS = '^';
const LEADS = '~';
const PART = '+';
const ALONE = '=';
/** A word in plain letters, with or without a sign. */
const PLAIN = /^[a-z']+[\^~+=]?$/i;
const MARKED = /^(.*)#(\d)$/su;

/** Returns the key of a homograph with a chosen reading: `read` and 1 give `read#1`. No word contains the mark. */
export function keyOfReading(word: WordKey, reading: number): WordKey {
  return `${word}${MARK}${reading}`;
}

/** Returns the key of a word whose place explains its capital: `Duke^`. */
export function keyOfOpening(word: string): WordKey {
  return word + OPENS;
}

/** Returns the key of a word whose place explains its capital and which is followed by another capital: `Wilma~`. */
export function keyOfLeading(word: string): WordKey {
  return word + LEADS;
}

/** Returns the key of a word that is part of a longer name: `School+`. */
export function keyOfPart(word: string): WordKey {
  return word + PART;
}

/** Returns the key of a word whose capital only a name can explain: `Tide=`. */
export function keyOfAlone(word: string): WordKey {
  return word + ALONE;
}

/** Returns a word as written, with its capital if it has one: `Duke` for `Duke^`, `School` for `School+`. */
export function shownOfKey(key: WordKey): string {
  return /[\^~+=]$/.test(key) ? key.slice(0, -1) : splitKey(key).word;
}

/**
 * Returns the key of the same word in lower case without a sign, if the word has only plain letters. Both keys have the
 * same analysis, because capitals make no difference to it: `duke` for `Duke` and `Duke^`.
 */
export function analysedAs(key: WordKey): WordKey {
  if (!PLAIN.test(key)) return key;
  const small = key.toLowerCase();
  return /[\^~+=]$/.test(small) ? small.slice(0, -1) : small;
}

/** Reads the word, its reading and the way it is written from a key. Any string is a key. */
export function splitKey(key: WordKey): KeyParts {
  const last = key.at(-1);
  if (last === OPENS) return { word: key.slice(0, -1).toLowerCase(), reading: null, capital: 'opens' };
  if (last === LEADS) return { word: key.slice(0, -1).toLowerCase(), reading: null, capital: 'leads' };
  if (last === PART) return { word: key.slice(0, -1), reading: null, capital: 'part' };
  if (last === ALONE) return { word: key.slice(0, -1), reading: null, capital: 'alone' };
  const marked = key.includes(MARK) ? MARKED.exec(key) : null;
  const word = marked ? marked[1]! : key;
  return { word, reading: marked ? Number(marked[2]) : null, capital: capitalOf(word) };
}

function capitalOf(word: string): Capital {
  const small = word.toLowerCase();
  if (word === small || word === 'I') return 'small';
  return isInCapitals(word) ? 'all' : 'mid';
}

/** True if a word has at least two letters and all are capitals: STOP, UK, NATO's; not I, Duke. */
export function isInCapitals(word: string): boolean {
  const owner = word.endsWith("'s") ? word.slice(0, -2) : word;
  return owner.toUpperCase() === owner && /\p{Lu}.*\p{Lu}/u.test(owner) && !/^I'/.test(owner);
}
