import { findSuffix } from '../../analyze/morphology/affixes.ts';
import type { Derivation } from './derivation.ts';
import type { WordFacts } from './evidence.ts';

/** Facts about words other than spelling and sound. */
export interface Facts extends WordFacts {
  /** The frequency rank, 1 for the commonest word. */
  readonly rank: ReadonlyMap<string, number>;
  /** The parts of speech of each base form in WordNet. */
  readonly lemmas: ReadonlyMap<string, ReadonlySet<'n' | 'v' | 'a' | 'r'>>;
  /** WordNet words that are always written with a capital. */
  readonly names?: ReadonlySet<string>;
  /** Words that a frequency list mostly has with a capital. */
  readonly capitalised?: ReadonlySet<string>;
}

/** The rank of words that are not in the frequency list. They count as rarer than all others. */
export const RAREST = 100_000;

export function rankOf(word: string, facts: Facts): number {
  return facts.rank.get(word) ?? RAREST;
}

/** Whether a word is in WordNet and not only as a name: `turkey`, not `wales`. */
export function isLemma(word: string, facts: Facts): boolean {
  return facts.lemmas.has(word) && !facts.names?.has(word);
}

/** Whether a word, if it occurs at all, is a name: `conner`; not `turkey`. */
export function looksLikeName(word: string, facts: Facts): boolean {
  if (isLemma(word, facts)) return false;
  return (
    (facts.names?.has(word) ?? false) || (facts.capitalised?.has(word) ?? false) || !facts.rank.has(word)
  );
}

/**
 * Returns the parts of speech as letters: all parts of speech in WordNet, and the part of speech that follows from the
 * suffix of the word (`expected`: a).
 */
export function partsOf(word: string, facts: Facts, found: ReadonlyMap<string, Derivation>): string {
  // American is a noun as well as an adjective. William is only a name.
  if (facts.names?.has(word)) return isNationality(word, facts) ? 'n' : '';
  const own = [...(facts.lemmas.get(word) ?? [])].join('');
  const derivation = found.get(word);
  if (derivation?.kind === 'suffix') return own + (findSuffix(derivation.affix)?.makes ?? '');
  if (derivation?.kind === 'prefix') return own + partsOf(derivation.base, facts, found);
  return own;
}

function isNationality(word: string, facts: Facts): boolean {
  const parts = facts.lemmas.get(word);
  return (parts?.has('n') && parts.has('a')) ?? false;
}

/** Whether two strings of part-of-speech letters have a letter in common. */
export function shareOne(one: string, other: string): boolean {
  for (const letter of one) if (other.includes(letter)) return true;
  return false;
}
