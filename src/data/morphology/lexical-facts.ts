import { findSuffix } from '../../analyze/morphology/affixes.ts';
import type { Derivation } from './derivation.ts';
import type { WordFacts } from './evidence.ts';

/** Facts about words besides spelling and sound. */
export interface Facts extends WordFacts {
  /** 1 for the commonest word. */
  readonly rank: ReadonlyMap<string, number>;
  /** WordNet base form to parts of speech. */
  readonly lemmas: ReadonlyMap<string, ReadonlySet<'n' | 'v' | 'a' | 'r'>>;
  /** WordNet words only ever written with a capital. */
  readonly names?: ReadonlySet<string>;
  /** Words a frequency list mostly writes with a capital. */
  readonly capitalised?: ReadonlySet<string>;
}

/** Rank given to a word the frequency list lacks: rarer than all. */
export const RAREST = 100_000;

export function rankOf(word: string, facts: Facts): number {
  return facts.rank.get(word) ?? RAREST;
}

/** True for a WordNet word that is not only a name: `turkey`, not `wales`. */
export function isLemma(word: string, facts: Facts): boolean {
  return facts.lemmas.has(word) && !facts.names?.has(word);
}

/** True for a word that is met, if at all, as a name: `conner`; not `turkey`. */
export function looksLikeName(word: string, facts: Facts): boolean {
  if (isLemma(word, facts)) return false;
  return (
    (facts.names?.has(word) ?? false) || (facts.capitalised?.has(word) ?? false) || !facts.rank.has(word)
  );
}

/** Parts of speech as letters: WordNet's, else what the word's own suffix makes (`expected`: a). */
export function partsOf(word: string, facts: Facts, found: ReadonlyMap<string, Derivation>): string {
  // An American is a noun as well as an adjective; William is only a name.
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

/** True when the two strings of part-of-speech letters share one. */
export function shareOne(one: string, other: string): boolean {
  for (const letter of one) if (other.includes(letter)) return true;
  return false;
}
