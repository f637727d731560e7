import type { PatternId, Reading } from '../../analyze/types.ts';

/**
 * Returns the units of a word in order, each as pattern and sound: `sh:SH`, `short-i:IH`, `p:P`. An ending or a
 * beginning has its pattern alone, because -s is one ending although it is pronounced s or z after different sounds.
 * The p of hop, hops and hopping is the same unit. The c of cat and the k of kite are two units.
 */
export function listUnits({ units }: Reading): string[] {
  return units.map(({ pattern, sound, affix }) =>
    affix || APOSTROPHE.has(pattern) ? pattern : `${pattern}:${sound}`,
  );
}

const APOSTROPHE = new Set(['contraction', 'possessive']);

/** Returns the pattern of a unit. */
export function patternOf(unit: string): PatternId {
  const end = unit.indexOf(':');
  return end === -1 ? unit : unit.slice(0, end);
}

/** Whether a unit is an ending or a beginning: -ing, un-, the n't of didn't. */
export function isAffixUnit(unit: string): boolean {
  return !unit.includes(':');
}

/** Whether the sound of a unit has a vowel: ar, u_e; not w. */
export function isVowel(unit: string): boolean {
  return VOWEL.test(unit);
}

const VOWEL = /[:.](A[AEHOWXY]|E[HRY]|I[HXY]|O[WY]|U[HW])/;

/** The sound of a unit: `SH`, `AA.R`. */
export function soundOf(unit: string): string {
  return unit.slice(unit.indexOf(':') + 1);
}

/** Whether a teacher hears a unit as one sound: ar, u_e; not x (k s), qu (k w) or the rime ank. */
export function isOneSound(unit: string): boolean {
  return soundsHeard(unit).length === 1;
}

/**
 * Whether two units differ in one sound that is plainly heard: ar and ay, ank and ink. False for x and ck, for a weak
 * vowel, and for the or of source and the au of sauce, which many people pronounce alike.
 */
export function differInOneSound(one: string, other: string): boolean {
  const [a, b] = [soundsHeard(one), soundsHeard(other)];
  if (a.length !== b.length) return false;
  const places = a.flatMap((sound, i) => (sound === b[i] ? [] : [i]));
  return (
    places.length === 1 &&
    places.every(
      (i) =>
        !WEAK.test(a[i]!) && !WEAK.test(b[i]!) && a[i]!.replace('O+R', 'O') !== b[i]!.replace('O+R', 'O'),
    )
  );
}

/** Returns the sounds that a teacher hears in a unit. A vowel with r, and the yoo of cute, are one sound each. */
function soundsHeard(unit: string): string[] {
  return soundOf(unit)
    .replace(/([AEIOU][A-Z])\.R$/, '$1+R')
    .replace(/Y\.UW/, 'Y+UW')
    .split('.');
}

const WEAK = /^(AX|IX)/;
