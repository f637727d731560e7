import type { Analyzer } from '../analyze/index.ts';
import names from './first-names.json' with { type: 'json' };

/**
 * First names that are mostly he or mostly she, from memory. A name of a group that is not a first name may be a place
 * or a boat.
 */
export const HE: readonly string[] = names.he.split(' ');
export const SHE: readonly string[] = names.she.split(' ');
const FIRST_NAMES: ReadonlySet<string> = new Set([...HE, ...SHE, ...names.wordsToo.split(' ')]);

/** Whether a word with a capital may be a person's first name: Bram, Rose. */
export function isFirstName(word: string): boolean {
  return FIRST_NAMES.has(word);
}

/**
 * Returns the names of a group that may be people in a sentence. A word that is no first name is left out, because it
 * is a place or a boat (Quay, Marigold).
 */
export function namesOfPeople(given: readonly string[], analyzer: Analyzer): string[] {
  return given.filter(
    (name) => FIRST_NAMES.has(name) || !/common|rare/.test(analyzer.analyze(name).usage ?? ''),
  );
}
