import type { Analyzer } from '../analyze/index.ts';
import names from './first-names.json' with { type: 'json' };

/** First names that are mostly one or the other, from memory; a group's names that are none of these may be places or boats. */
export const HE: readonly string[] = names.he.split(' ');
export const SHE: readonly string[] = names.she.split(' ');
const FIRST_NAMES: ReadonlySet<string> = new Set([...HE, ...SHE, ...names.wordsToo.split(' ')]);

/** The names of a group that may be people in a sentence: any but a word that is no first name, which is a place or a boat (Quay, Marigold). */
export function namesOfPeople(given: readonly string[], analyzer: Analyzer): string[] {
  return given.filter(
    (name) => FIRST_NAMES.has(name) || !/common|rare/.test(analyzer.analyze(name).usage ?? ''),
  );
}
