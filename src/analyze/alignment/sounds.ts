/**
 * The engine writes sounds in ARPAbet without stress. Two weak vowels have symbols of their own: `AX` for schwa (AH0 in
 * CMUdict) and `IX` for a weak /i/ (IH0 in CMUdict). `IX` is shown as IH.
 *
 * A British reading has seven more vowels: `AR` (car, father), `OR` (fork, saw), `EA` (chair), `IA` (deer), `UA`
 * (cure), `AYA` (fire), `AWA` (flour). In British, `AA` is only the vowel of dock.
 */
const VOWELS = new Set(
  'AA AE AH AO AW AX AY EH ER EY IH IX IY OW OY UH UW AR OR EA IA UA AYA AWA'.split(' '),
);

const LONG = new Set(['EY', 'IY', 'AY', 'OW', 'UW', 'Y.UW']);

/** Returns true for `AE` and `AX.L`, and false for `K.S` and `-`. */
export function hasVowel(sound: string): boolean {
  return countVowels(sound) > 0;
}

/** Counts the syllables of a unit: 2 for `AX.B.AX.L`. */
export function countVowels(sound: string): number {
  let vowels = counted.get(sound);
  if (vowels === undefined) {
    vowels = sound.split('.').filter((one) => VOWELS.has(one)).length;
    counted.set(sound, vowels);
  }
  return vowels;
}
/** A cache of the syllable counts of a few hundred unit sounds. */
const counted = new Map<string, number>();

/** Returns true for the long vowel sounds that a single letter can spell (name, he, hi, go, unit). */
export function isLong(sound: string): boolean {
  return LONG.has(sound);
}

/** Returns the sound as it is shown, with the weak /i/ written like the full one. */
export function shownSound(sound: string): string {
  return sound.includes('IX') ? sound.replaceAll('IX', 'IH') : sound;
}

/** Writes schwa as AH and the weak i as IH, because sources differ in the weak vowels they distinguish. */
export function mergeWeak(sounds: string): string {
  return sounds.replaceAll('AX', 'AH').replaceAll('IX', 'IH');
}

/** Voiceless sounds. After them, -s is pronounced S and -ed is pronounced T. */
export const VOICELESS: ReadonlySet<string> = new Set(['P', 'T', 'K', 'F', 'TH', 'S', 'SH', 'CH']);

/** Hissing sounds. After them, -s is a syllable (foxes). */
export const SIBILANT: ReadonlySet<string> = new Set(['S', 'Z', 'SH', 'ZH', 'CH', 'JH']);
