import type { Pattern, PatternId } from '../types.ts';

/**
 * Facts about a row of the catalogue that the options of a group and the by-sight list need. Each fact is found from
 * the row itself.
 */

/** True for an unstressed vowel: the a of about, the or of doctor; false for the stressed a of cat and or of fork. */
export function isWeakVowel({ family, id }: Pattern): boolean {
  return family === 'schwa' || id.endsWith('-weak');
}

/** True for two or three consonants that are each heard: the st of stop; false for the sh of ship. */
export function isBlend({ family }: Pick<Pattern, 'family'>): boolean {
  return family === 'initial blend' || family === 'final blend';
}

/** True for the type of a syllable in a longer word: the closed nap of napkin. */
export function isSyllableType({ family }: Pattern): boolean {
  return family === 'syllable type';
}

/** Returns the length of the base word from `syllables-2` or `syllables-3` (three or more). Returns null for other rows. */
export function syllableCount({ family, id }: Pattern): number | null {
  return family === 'syllable count' ? Number(id.slice(id.lastIndexOf('-') + 1)) : null;
}

/** True for the o of hot; false for the o of most. */
export function isShortO({ letters, sounds, family }: Pattern): boolean {
  return family === 'short vowel' && letters === 'o' && sounds[0] === 'AA';
}

/** True for the o of dog and long, which some regions pronounce as in hot and others as in saw; false for the aw of saw. */
export function isOpenO({ letters, sounds }: Pattern): boolean {
  return letters === 'o' && sounds.length === 1 && sounds[0] === 'AO';
}

/** True for the w of web; false for the wh of whale. */
export function isPlainW({ letters, sounds }: Pattern): boolean {
  return letters === 'w' && sounds[0] === 'W';
}

/**
 * True for the wh of whale, which some regions pronounce as w and others with breath before it; false for the wh of
 * who.
 */
export function isWh({ letters, sounds }: Pattern): boolean {
  return letters === 'wh' && sounds[0] === 'W';
}

/** True for letters known as an ending or a beginning, not by their sounds: the -or of sailor; false for the or of fork. */
export function isAffix({ family }: Pattern): boolean {
  return family === 'suffix' || family === 'prefix';
}

/**
 * Returns the patterns of an ending that is a word by itself and is read as one: the teen of sixteen. Returns null for
 * other endings, such as -ful, whose u is weak.
 */
export function lettersOfEnding({ id }: Pattern): readonly PatternId[] | null {
  return id === 'suffix-teen' ? ['t', 'ee', 'n'] : null;
}
