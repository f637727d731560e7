/**
 * Sounds inside the engine are ARPAbet without stress, with two weak vowels set apart: `AX` for schwa
 * (CMUdict's AH0) and `IX` for a weak /i/ (its IH0). `IX` is shown as IH. A British reading has seven more vowels: `AR` (car,
 * father), `OR` (fork, saw), `EA` (chair), `IA` (deer), `UA` (cure), `AYA` (fire), `AWA` (flour); `AA` is only that of dock there.
 */
const VOWELS = new Set(
  'AA AE AH AO AW AX AY EH ER EY IH IX IY OW OY UH UW AR OR EA IA UA AYA AWA'.split(' '),
);

const LONG = new Set(['EY', 'IY', 'AY', 'OW', 'UW', 'Y.UW']);

/** True for `AE` and `AX.L`, false for `K.S` and `-`. */
export function hasVowel(sound: string): boolean {
  return countVowels(sound) > 0;
}

/** How many syllables a unit makes: 2 for `AX.B.AX.L`. */
export function countVowels(sound: string): number {
  let vowels = counted.get(sound);
  if (vowels === undefined) {
    vowels = sound.split('.').filter((one) => VOWELS.has(one)).length;
    counted.set(sound, vowels);
  }
  return vowels;
}
/** The few hundred sounds of units, each counted once. */
const counted = new Map<string, number>();

/** The long vowel sounds a single letter can stand for (name, he, hi, go, unit). */
export function isLong(sound: string): boolean {
  return LONG.has(sound);
}

/** The sound as it is shown: the weak /i/ is not told apart from the full one. */
export function shownSound(sound: string): string {
  return sound.includes('IX') ? sound.replaceAll('IX', 'IH') : sound;
}

/** Sounds with the schwa as AH and the weak i as IH, since sources differ in which weak vowels they tell apart. */
export function mergeWeak(sounds: string): string {
  return sounds.replaceAll('AX', 'AH').replaceAll('IX', 'IH');
}

/** Sounds made without the voice: after them -s says S and -ed says T. */
export const VOICELESS: ReadonlySet<string> = new Set(['P', 'T', 'K', 'F', 'TH', 'S', 'SH', 'CH']);

/** Hissing sounds: after them -s is a syllable (foxes). */
export const SIBILANT: ReadonlySet<string> = new Set(['S', 'Z', 'SH', 'ZH', 'CH', 'JH']);
