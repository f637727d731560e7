import type { Aligner, WeighedUnit } from '../../analyze/alignment/align.ts';
import { cleanPronunciation } from './clean-pronunciation.ts';

export interface AlignedReading {
  readonly units: readonly WeighedUnit[];
  readonly sounds: readonly string[];
  /** Place among the pronunciations listed. */
  readonly listed: number;
}

/**
 * All pronunciations that can be aligned, the citation form first: stressed before weak (the DH AH0), then
 * without irregular units or a silent e inside the word (interest), with the fuller vowels (muffin with a weak i before one with schwa; dog with AO
 * before AA), with more sounds kept (every in three syllables), then as listed.
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
  const schwaForI = units.filter(({ letters, sound }) => /^(i|y)$/.test(letters) && sound === 'AX').length;
  const early = units.slice(0, -1).filter(({ letters }) => /^[^aeiou]+e$/.test(letters)).length;
  const flatO = units.filter(({ letters, sound }) => /^(o|ou|aw|au)$/.test(letters) && sound === 'AA').length;
  const merged = units.filter(({ letters, sound }) => sound === 'AO' && /^(o|ou)$/.test(letters)).length;
  return (
    (stressed ? 0 : 20) +
    irregular * 4 +
    early * 3 +
    schwaForI +
    (merged > 0 ? -1 : 0) * (flatO > 0 ? 0 : 1) -
    sounds.length * 0.6 +
    listed * 0.25
  );
}
