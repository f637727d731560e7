import { sayUnit } from '../../analyze/accent/british-rules.ts';
import type { Spelling, WordRecord } from '../../analyze/lexicon/word-record.ts';
import { cleanWithStress } from '../lexicon/clean-pronunciation.ts';
import { sameSounds } from '../lexicon/same-sounds.ts';
import { readSourceRows } from '../read-source-rows.ts';

type Pronunciations = ReadonlyMap<string, readonly (readonly string[])[]>;

/**
 * What the rules of analyze/accent cannot know of a word: its units where it has a reading of its own (british-readings.tsv), else the
 * place of each er whose stress they mistake, by the dictionary's: `2w` is weak, `4f` full. Words that the rules get right are not listed.
 */
export function listBritish(
  records: ReadonlyMap<string, WordRecord>,
  pronunciations: Pronunciations,
): ReadonlyMap<string, string> {
  const told = new Map<string, string>();
  for (const [word, { readings, homograph }] of records) {
    const [reading] = readings;
    if (homograph || reading?.kind !== 'whole') continue;
    const marks = marksOf(word, reading.units, pronunciations.get(word) ?? []);
    if (marks.length > 0) told.set(word, marks.join(' '));
  }
  for (const [word, units] of readSourceRows('british-readings.tsv')) told.set(word!, units!);
  return told;
}

function marksOf(
  word: string,
  units: readonly Spelling[],
  variants: readonly (readonly string[])[],
): string[] {
  if (!units.some(dependsOnStress)) return [];
  const stress = stressOf(word, units, variants);
  if (!stress) return [];
  return units.flatMap((unit, i) => {
    if (!dependsOnStress(unit)) return [];
    const [said, ...others] = sayUnit(word, units, i, { broadBath: true });
    if (others.length > 0) return [];
    const isWeak = said!.heard === 'AX' || said!.sound === 'AX';
    const isStressed = unit.sound === 'ER' ? stress[i] !== '0' : stress[i] === '1';
    if (unit.sound === 'EH' && !isWeak) return [];
    return isWeak === isStressed ? [`${i}${isStressed ? 'f' : 'w'}`] : [];
  });
}

/** The er of sister and her; the a of canary and secretary. */
function dependsOnStress({ letters, sound }: Spelling): boolean {
  return sound === 'ER' || `${letters}:${sound}` === 'a:EH';
}

/** The stress of each unit's first sound, by the pronunciation that the units were made from. */
function stressOf(
  word: string,
  units: readonly Spelling[],
  variants: readonly (readonly string[])[],
): string[] | null {
  const sounds = units.flatMap(({ sound }) => (sound === '-' ? [] : sound.split('.')));
  for (const phones of variants) {
    const clean = cleanWithStress(word, phones);
    if (clean.sounds.length !== sounds.length || !sameSounds(clean.sounds, sounds)) continue;
    let at = 0;
    return units.map(({ sound }) => {
      const own = clean.stress[at] ?? '';
      if (sound !== '-') at += sound.split('.').length;
      return own;
    });
  }
  return null;
}
