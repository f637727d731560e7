import type { Pattern, PatternId } from '../types.ts';

/** Facts about a row that the options of a group and the by-sight list need; they are asked of the row itself. */

/** An unstressed vowel: a in about, or in doctor; not the stressed a of cat or or of fork. */
export function isWeakVowel({ family, id }: Pattern): boolean {
  return family === 'schwa' || id.endsWith('-weak');
}

/** Two or three consonants each heard: st in stop; not sh in ship. */
export function isBlend({ family }: Pick<Pattern, 'family'>): boolean {
  return family === 'initial blend' || family === 'final blend';
}

/** How a syllable of a longer word is built: the closed nap of napkin. */
export function isSyllableType({ family }: Pattern): boolean {
  return family === 'syllable type';
}

/** The number in `syllables-2`, `syllables-3` (three or more): how long the base word is; null for other rows. */
export function syllableCount({ family, id }: Pattern): number | null {
  return family === 'syllable count' ? Number(id.slice(id.lastIndexOf('-') + 1)) : null;
}

/** The o of hot; not that of most. */
export function isShortO({ letters, sounds, family }: Pattern): boolean {
  return family === 'short vowel' && letters === 'o' && sounds[0] === 'AA';
}

/** The o of dog and long, by region said like hot or like saw; not the aw of saw. */
export function isOpenO({ letters, sounds }: Pattern): boolean {
  return letters === 'o' && sounds.length === 1 && sounds[0] === 'AO';
}

/** The w of web; not the wh of whale. */
export function isPlainW({ letters, sounds }: Pattern): boolean {
  return letters === 'w' && sounds[0] === 'W';
}

/** The wh of whale, by region said as w or with breath before it; not that of who. */
export function isWh({ letters, sounds }: Pattern): boolean {
  return letters === 'wh' && sounds[0] === 'W';
}

/** Letters that are known as an ending or a beginning, not by their sounds: -or in sailor; not the or of fork. */
export function isAffix({ family }: Pattern): boolean {
  return family === 'suffix' || family === 'prefix';
}

/** The patterns of an ending that is a word by itself and is read as one: the teen of sixteen. Null for others, such as -ful, whose u is weak. */
export function lettersOfEnding({ id }: Pattern): readonly PatternId[] | null {
  return id === 'suffix-teen' ? ['t', 'ee', 'n'] : null;
}
