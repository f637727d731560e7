import data from './plain-words.json' with { type: 'json' };
import type { WordBank } from './word-bank.ts';

/**
 * The rank in the bank beyond which few children of the primary grades know a word (gout, sac, tract). Set by reading
 * the bank by hand.
 */
const ORDINARY = 6500;
/**
 * Words that are common in films and that children meet late (lease, grief), and short names and slang (jack, mic).
 * Chosen from the bank by hand.
 */
const adult: ReadonlySet<string> = new Set(data.adult.split(' '));
/** Words that are rare in films and that children meet early (hen, kite, snail). Chosen from the bank by hand. */
const young: ReadonlySet<string> = new Set(data.young.split(' '));

/**
 * Whether a child of the primary grades knows a word by itself: kite and ship, not lease or gout. A child who knows a word knows
 * its forms (kites), unless they are rare.
 */
export function isPlain(word: string, base: string | null, bank: WordBank): boolean {
  const rankOf = (each: string): number => bank.find(each)?.rank ?? Number.POSITIVE_INFINITY;
  if (word.includes("'")) return true;
  if (base !== null && base !== word)
    return !adult.has(word) && rankOf(word) <= 1.5 * ORDINARY && isPlain(base, null, bank);
  return isPlainBase(word, rankOf(word));
}

/**
 * Whether a child of the primary grades knows a word that is no form of another word. Decided by the word's rank in the
 * bank.
 */
export function isPlainBase(word: string, rank: number): boolean {
  return !adult.has(word) && (young.has(word) || rank <= ORDINARY);
}
