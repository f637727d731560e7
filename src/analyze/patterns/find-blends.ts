import { hasVowel } from '../alignment/sounds.ts';
import type { WordSpelling } from '../build/built-word.ts';
import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';

const blends = new Set(catalogue.filter((row) => row.family.endsWith(' blend')).map((row) => row.id));

/**
 * Finds the blends at the start and end of one base: two or three spellings that each keep a sound of their own. stamp
 * has start-st and end-mp; nest has end-st.
 *
 * No blends:
 * - ship (one sound)
 * - bank (the n is pronounced NG)
 * - horse and prince (the last consonant carries a silent e)
 * - change (the g is soft)
 * - its (a last s sounds like an ending)
 */
export function findBlends(base: readonly WordSpelling[]): PatternId[] {
  const first = base.findIndex(isVowel);
  if (first === -1) return [];
  const start = base.slice(0, first).filter(isSounded);
  const last = base
    .slice(base.findLastIndex(isVowel) + 1)
    .filter((one) => isSounded(one) && !isSilentE(one) && !isOtherSound(one));
  const end = last.at(-1)?.letters === 's' ? last.slice(0, -1) : last;
  return [...nameBlend('start', start), ...nameBlend('end', end)];
}

/**
 * True for a spelling with a silent e, such as the se of horse and the ce of prince. A blend cannot end with such a
 * spelling.
 */
function isSilentE({ letters }: WordSpelling): boolean {
  return /[^e]e$/.test(letters);
}

/** True for sounds that these letters do not have in a blend: the n of bank, the soft g of change. */
function isOtherSound({ sound }: WordSpelling): boolean {
  return sound === 'NG' || sound === 'JH';
}

function nameBlend(place: 'start' | 'end', spellings: readonly WordSpelling[]): PatternId[] {
  if (spellings.length < 2) return [];
  const id = `${place}-${spellings.map((one) => one.spells ?? one.letters).join('')}`;
  if (blends.has(id)) return [id];
  return [place === 'end' && spellings.length > 2 ? 'end-three' : `${place}-other`];
}

function isVowel({ sound }: WordSpelling): boolean {
  return hasVowel(sound);
}

function isSounded({ sound }: WordSpelling): boolean {
  return sound !== '-';
}
