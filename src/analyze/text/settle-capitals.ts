import { type Capital, keyOfAlone, keyOfPart, shownOfKey, splitKey } from '../homographs/word-key.ts';
import type { WordKey } from '../types.ts';
import { FORMS_OF_ADDRESS } from './name-parts.ts';

/**
 * The number of capitals inside sentences that makes a word a name in its text, if the text never has the word without
 * a capital: Apple, Switch.
 */
const OFTEN = 3;
/** The kinds of capitals about which the rest of a text may decide. */
const SETTLED: ReadonlySet<Capital> = new Set<Capital>(['opens', 'leads', 'mid', 'alone']);

/** A word in small letters, which most keys are. Nothing is settled about it. */
const PLAIN = /^[a-z']+$/;

/** Returns whether the rest of a text may decide about a capital: `Biscuit^`, `Biscuit`; not `Biscuit+`. */
export function dependsOnText(capital: Capital): boolean {
  return SETTLED.has(capital);
}

/** Returns the word that is counted to decide about a key: `Biscuit` for `Biscuit^` and `Biscuit's+`. */
export function nameOf(key: WordKey): string {
  const shown = shownOfKey(key);
  return shown.endsWith("'s") ? shown.slice(0, -2) : shown;
}

/**
 * Returns the key of a word with a capital, changed if the rest of the text shows more about the capital. Returns any
 * other key unchanged. `countOf` returns how often the text has a key.
 *
 * - A capital that its place explains counts if the text has the word with a capital inside sentences at least as often
 * as in lower case: `Biscuit^` becomes `Biscuit` beside a cat named Biscuit.
 * - A common word is a name if the text never has the word in lower case, and has it often or as a part of a longer
 * name (Bram Cook): `Cook` becomes `Cook+`.
 * - A part of a longer name that begins a sentence before another capital is a name too: New Skarvik.
 * - A single capital (the Tide) shows nothing if the text also has the word in lower case.
 */
export function settleCapital(key: WordKey, countOf: (key: WordKey) => number): WordKey {
  if (PLAIN.test(key)) return key;
  const { capital } = splitKey(key);
  if (!dependsOnText(capital)) return key;
  const shown = shownOfKey(key);
  const owner = nameOf(key);
  const small = owner.toLowerCase();
  const count = (word: string, keyOf = (written: string): WordKey => written): number =>
    countOf(keyOf(word)) + countOf(keyOf(`${word}'s`));
  const part = count(owner, keyOfPart);
  const asName = count(owner) + count(owner, keyOfAlone) + part;
  if (asName === 0) return key;
  const plain = count(small);
  const isName = plain === 0 && (asName >= OFTEN || (part > 0 && capital !== 'opens'));
  if ((isName || (part > 0 && capital === 'leads')) && !FORMS_OF_ADDRESS.has(small)) return keyOfPart(shown);
  if (capital === 'alone') return plain > 0 ? shown : key;
  return capital !== 'mid' && asName >= plain ? shown : key;
}

/** Returns the counts of a whole text with its capitals settled. The given counts are not changed. */
export function settleCounts(counts: ReadonlyMap<WordKey, number>): Map<WordKey, number> {
  const countOf = (key: WordKey): number => counts.get(key) ?? 0;
  const settled = new Map<WordKey, number>();
  for (const [key, count] of counts) {
    const as = settleCapital(key, countOf);
    settled.set(as, (settled.get(as) ?? 0) + count);
  }
  return settled;
}
