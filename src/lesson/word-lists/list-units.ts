import type { PatternId, Reading } from '../../analyze/types.ts';

/**
 * What a word is made of, in order, as pattern and sound: `sh:SH`, `short-i:IH`, `p:P`; an ending or a beginning as the
 * pattern alone, because -s says s or z by the sound before it and is one ending still. The p of hop, hops and hopping
 * is the same; the c of cat and the k of kite are not.
 */
export function listUnits({ units }: Reading): string[] {
  return units.map(({ pattern, sound, affix }) =>
    affix || APOSTROPHE.has(pattern) ? pattern : `${pattern}:${sound}`,
  );
}

const APOSTROPHE = new Set(['contraction', 'possessive']);

/** The pattern of a unit. */
export function patternOf(unit: string): PatternId {
  const end = unit.indexOf(':');
  return end === -1 ? unit : unit.slice(0, end);
}

/** Whether a unit is an ending or a beginning: -ing, un-, the n't of didn't. */
export function isAffix(unit: string): boolean {
  return !unit.includes(':');
}

/** Whether its sound has a vowel in it: ar, u_e; not w. */
export function isVowel(unit: string): boolean {
  return VOWEL.test(unit);
}

const VOWEL = /[:.](A[AEHOWXY]|E[HRY]|I[HXY]|O[WY]|U[HW])/;
