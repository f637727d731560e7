import type { KeyParts } from '../homographs/word-key.ts';
import type { Usage } from '../types.ts';
import type { CompiledGroup } from './compile-group.ts';

/** The fields of a group that say which words are names. */
export type NamesOfGroup = Pick<CompiledGroup, 'names' | 'smallNames'>;

/**
 * True if a word is a name in its place.
 *
 * - In lower case, a word is a name only if the group lists it in lower case (`smallNames`). A cat called Biscuit does
 * not make biscuit a name.
 * - With a capital, these are names: Bram and Bram's if Bram is listed; a part of a longer name (Tarn Quay School);
 * inside a sentence, any word that is not common (Falk) or whose capital has no other explanation (all of the Tide).
 * Monday and I'm are not names.
 * - With a capital that the place explains, these are names: a word that occurs only as a name (Wilma), a listed word
 * that is not common, and a word that is not common and comes before another capital (Marigold Falk).
 */
export function isName(parts: KeyParts, usage: Usage | null, { names, smallNames }: NamesOfGroup): boolean {
  const word = parts.word.toLowerCase();
  const owner = ownerOf(word);
  if (smallNames.has(word) || smallNames.has(owner)) return true;
  return isNameInPlace(parts, usage, names.has(word) || names.has(owner));
}

/** Does the same as `isName` for a word that the group lists with a capital or does not list. */
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

/** Returns the owner in a possessive in lower case: bram for bram's and brams'. Returns any other word unchanged. */
export function ownerOf(word: string): string {
  return word.includes("'") ? word.replace(/'s?$/, '') : word;
}

/**
 * True if a word, given in lower case, is written with a capital but is not a name to tell a reader in advance: I and
 * its contractions, days, months, forms of address. Monday is judged like other words; Bram is a name.
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
