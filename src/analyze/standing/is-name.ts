import type { KeyParts } from '../homographs/word-key.ts';
import type { Usage } from '../types.ts';
import type { CompiledGroup } from './compile-group.ts';

/** The fields of a group that say which words are names. */
export type NamesOfGroup = Pick<CompiledGroup, 'names' | 'smallNames'>;

/**
 * Whether a word is a name in its place. With small letters it is one only where the group lists it so (`smallNames`); biscuit is
 * none beside a cat called Biscuit. With a capital it is: Bram and Bram's when Bram is listed; a part of a longer
 * name (Tarn Quay School); inside a sentence any word that is not common (Falk), or that nothing else gives a capital (all of the
 * Tide), nor Monday or I'm.
 * Where its place explains the capital, only a word that is met only as a name (Wilma), or is listed and not common, or not common
 * and before another capital (Marigold Falk).
 */
export function isName(parts: KeyParts, usage: Usage | null, { names, smallNames }: NamesOfGroup): boolean {
  const word = parts.word.toLowerCase();
  const owner = ownerOf(word);
  if (smallNames.has(word) || smallNames.has(owner)) return true;
  return isNameInPlace(parts, usage, names.has(word) || names.has(owner));
}

/** The same for a word that the group lists with a capital, or not at all. */
export function isNameInPlace(
  { word: shown, capital }: KeyParts,
  usage: Usage | null,
  isListed: boolean,
): boolean {
  if (capital === 'small') return false;
  const word = shown.toLowerCase();
  if (capital === 'opens' || (capital === 'leads' && usage === 'common'))
    return isListed ? usage !== 'common' : usage === 'name' && !isCapitalWord(word);
  if (isListed || capital === 'part') return true;
  if (isCapitalWord(word)) return false;
  if (capital === 'alone') return true;
  return capital === 'all' ? usage === 'name' : usage !== 'common';
}

/** Whom a word in lower case belongs to: bram of bram's and brams'; else the word itself. */
export function ownerOf(word: string): string {
  return word.includes("'") ? word.replace(/'s?$/, '') : word;
}

/**
 * Whether a word, given in lower case, is written with a capital although it is no name to be told in advance:
 * I and its contractions, days, months, forms of address. Monday is judged like other words; Bram is a name.
 */
function isCapitalWord(word: string): boolean {
  return CAPITAL_WORDS.has(word.replace(/'.*$/, ''));
}

const CAPITAL_WORDS: ReadonlySet<string> = new Set(
  (
    'i monday tuesday wednesday thursday friday saturday sunday january february march april may june july ' +
    'august september october november december mr mrs ms miss dr'
  ).split(' '),
);
