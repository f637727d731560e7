import type { WordKey } from '../types.ts';

/**
 * How a word is written in its place. `small`: in small letters. `mid`: with a capital that no place explains (the dog
 * Duke). `opens`: with a capital that its place explains, at the start of a sentence or in a headline. `leads`: the same before
 * another capital, which may be a part of the same name (Wilma Falk ran; not: Then Bram ran). `part`: beside other
 * capitals, as a part of a longer name (Tarn Quay School, Mr. Falk). `alone`: behind a small word or a number (all of the
 * Tide; not: to Stop). `all`: in capitals, in a text that is not (NATO, STOP).
 */
export type Capital = 'small' | 'mid' | 'opens' | 'leads' | 'part' | 'alone' | 'all';

/** The parts of a key: the word, its chosen reading, and how it is written. */
export interface KeyParts {
  /** In small letters where it is written so or its place explains the capital; else as written (`Duke`, `NATO`). */
  readonly word: string;
  /** Null where none is chosen. */
  readonly reading: number | null;
  readonly capital: Capital;
}

const MARK = '#';
const OPENS = '^';
const LEADS = '~';
const PART = '+';
const ALONE = '=';
const MARKED = /^(.*)#(\d)$/su;

/** The key of a homograph whose reading is chosen: `read` and 1 give `read#1`. No word has the mark in it. */
export function keyOfReading(word: WordKey, reading: number): WordKey {
  return `${word}${MARK}${reading}`;
}

/** The key of a word whose capital its place explains: `Duke^`. */
export function keyOfOpening(word: string): WordKey {
  return word + OPENS;
}

/** The key of such a word with another capital behind it: `Wilma~`. */
export function keyOfLeading(word: string): WordKey {
  return word + LEADS;
}

/** The key of a word that is a part of a longer name: `School+`. */
export function keyOfPart(word: string): WordKey {
  return word + PART;
}

/** The key of a word whose capital nothing but a name explains: `Tide=`. */
export function keyOfAlone(word: string): WordKey {
  return word + ALONE;
}

/** A word as it is written, with its capital where it has one: `Duke` for `Duke^`, `School` for `School+`. */
export function shownOfKey(key: WordKey): string {
  return /[\^~+=]$/.test(key) ? key.slice(0, -1) : splitKey(key).word;
}

/** Reads a key: the word, its reading, how it is written. Any string is a key. */
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

/** Whether a word of two letters or more has no small one: STOP, UK, NATO's; not I, Duke. */
export function isInCapitals(word: string): boolean {
  const owner = word.endsWith("'s") ? word.slice(0, -2) : word;
  return owner.toUpperCase() === owner && /\p{Lu}.*\p{Lu}/u.test(owner) && !/^I'/.test(owner);
}
