import type { Aligner, WeighedUnit } from '../../analyze/alignment/align.ts';
import { cleanPronunciation } from './clean-pronunciation.ts';

export interface AlignedReading {
  readonly units: readonly WeighedUnit[];
  readonly sounds: readonly string[];
  /** The index in the list of pronunciations. */
  readonly listed: number;
}

/**
 * Returns all pronunciations that can be aligned, the citation form first. The order depends on these preferences:
 * - stressed before weak (the DH AH0)
 * - without irregular units or a silent e inside the word (interest)
 * - with fuller vowels (muffin with a weak i before one with schwa; dog with AO before AA)
 * - with more sounds kept (every in three syllables)
 * - the order of the list
 */
export function rankReadings(
  word: string,
  variants: readonly (readonly string[])[],
  aligner: Aligner,
): AlignedReading[] {
  const aligned: (AlignedReading & { readonly rank: number })[] = [];
  for (const [listed, phones] of variants.entries()) {
    const sounds = cleanPronunciation(word, phones);
    const found = aligner.align(word, sounds);
    if (!found) continue;
    aligned.push({ units: found.units, sounds, listed, rank: rank(found.units, phones, sounds, listed) });
  }
  return aligned.sort((a, b) => a.rank - b.rank);
}

function rank(
  units: readonly WeighedUnit[],
  phones: readonly string[],
  sounds: readonly string[],
  listed: number,
): number {
  const stressed = phones.some((phone) => /[12]$/.test(phone));
  const irregular = units.filter((unit) => unit.irregular).length;
  const schwaForI = units.filter(
    ({ letters, sound }) =>
      (/^(i|y)$/.test(letters) && sound === 'AX') || `${letters}:${sound}` === 'age:AX.JH',
  ).length;
  const early = units.slice(0, -1).filter(({ letters }) => /^[^aeiou]+e$/.test(letters)).length;
  // calm and palm are preferred without a pronounced l. CMUdict lists both pronunciations.
  const saidL = units.filter(
    ({ letters }, i) => letters === 'l' && units[i - 1]?.letters === 'a' && units[i + 1]?.letters === 'm',
  ).length;
  const unlikelyO = units.filter((unit, i) => isUnlikelyO(unit, units[i + 1])).length;
  return (
    (stressed ? 0 : 20) +
    irregular * 4 +
    early * 3 +
    schwaForI +
    saidL * 1.5 +
    unlikelyO * 1.5 -
    sounds.length * 0.6 +
    listed * 0.7
  );
}

/**
 * Whether an o sound is the less likely of two, where CMUdict has both. aw and au are AO. o is AO before f, s, th, ng,
 * g (dog, lost) and AA elsewhere (on, lot).
 */
function isUnlikelyO({ letters, sound }: WeighedUnit, next: WeighedUnit | undefined): boolean {
  if (letters === 'al' && next?.letters === 'm') return false;
  if (/^(au|aw|augh|ou|al)$/.test(letters)) return sound === 'AA';
  if (letters !== 'o') return false;
  const opens = /^(ff?|gh|ss?|st|th|ng|gg?)$/.test(next?.letters ?? '');
  return sound === (opens ? 'AA' : 'AO');
}
