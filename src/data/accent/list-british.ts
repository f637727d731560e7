import { createBritish } from '../../analyze/accent/british.ts';
import { sayUnit } from '../../analyze/accent/british-rules.ts';
import { hasVowel } from '../../analyze/alignment/sounds.ts';
import { buildRecord, type FindBuilt } from '../../analyze/build/build-word.ts';
import { type BuiltWord, spellingsOf, type WordSpelling } from '../../analyze/build/built-word.ts';
import type { Correspondence, WordRecord } from '../../analyze/lexicon/word-record.ts';
import { cleanWithStress } from '../lexicon/clean-pronunciation.ts';
import { sameSounds } from '../lexicon/same-sounds.ts';
import { readSourceRows } from '../read-source-rows.ts';

type Pronunciations = ReadonlyMap<string, readonly (readonly string[])[]>;

/**
 * Returns the facts about a word that the rules of analyze/accent cannot know. Words for which the rules give the right
 * result are not listed. A listed word has:
 *
 * - its units, if it has a reading of its own (british-readings.tsv), or if the stress moved to a vowel that is weak in
 * the base (the -or- of territorial differs from the -or- of territory)
 * - the place of each er whose stress the rules get wrong, with its stress in the dictionary: `2w` is weak, `4f` is
 * full
 *
 * The readings of a homograph are separated by ` / `.
 */
export function listBritish(
  records: ReadonlyMap<string, WordRecord>,
  pronunciations: Pronunciations,
): ReadonlyMap<string, string> {
  const told = new Map<string, string>();
  for (const [word, { readings }] of records) {
    const marks = readings.map((reading) =>
      reading.kind === 'whole' ? marksOf(word, reading.units, pronunciations.get(word) ?? []).join(' ') : '',
    );
    if (marks.some((each) => each !== '')) told.set(word, marks.join(' / '));
  }
  for (const [word, units] of readSourceRows('british-readings.tsv')) told.set(word!, units!);
  for (const [word, units] of listMoved(records, pronunciations, told)) told.set(word, units);
  return told;
}

function marksOf(
  word: string,
  units: readonly Correspondence[],
  variants: readonly (readonly string[])[],
): string[] {
  if (!units.some(dependsOnStress)) return [];
  const isStressed = stressOf(word, units, variants);
  if (!isStressed) return [];
  return units.flatMap((unit, i) => {
    if (!dependsOnStress(unit)) return [];
    const [said, ...others] = sayUnit(word, units, i, { broadBath: true });
    if (others.length > 0) return [];
    const weak = isWeak(said!);
    if (unit.sound === 'EH' && !weak) return [];
    return weak === isStressed[i] ? [`${i}${weak ? 'f' : 'w'}`] : [];
  });
}

const isWeak = ({ heard, sound }: WordSpelling): boolean => heard === 'AX' || sound === 'AX';

/** Whether the British sound of a unit depends on stress: the er of sister and her, the a of canary and secretary. */
function dependsOnStress({ letters, sound }: Correspondence): boolean {
  return sound === 'ER' || `${letters}:${sound}` === 'a:EH';
}

/** Yields derived words that stress a weak vowel of their base, with their units. */
function* listMoved(
  records: ReadonlyMap<string, WordRecord>,
  pronunciations: Pronunciations,
  told: ReadonlyMap<string, string>,
): Generator<[word: string, units: string]> {
  const find = (word: string) => {
    const record = records.get(word);
    return record ? { ...record, usage: 'common' as const } : null;
  };
  const british = createBritish(
    { find, findBritish: (word) => told.get(word) ?? null },
    { accent: 'british', bath: 'father' },
  );
  const known = new Map<string, readonly BuiltWord[]>();
  const findBritish: FindBuilt = (word) => {
    const before = known.get(word);
    if (before) return before;
    const record = british.lexicon.find(word);
    const built = record ? buildRecord(word, record, findBritish) : [];
    known.set(word, built);
    return built;
  };
  for (const [word, { readings, homograph }] of records) {
    if (readings[0]?.kind !== 'affixed' || homograph || told.has(word)) continue;
    const said = findBritish(word)[0];
    const american = british.findAmerican(word)[0];
    if (!said || !american || !spellingsOf(said).some(isWeakR)) continue;
    const units = spellingsOf(american);
    const isStressed = stressOf(word, units, pronunciations.get(word) ?? []);
    const heard = spellingsOf(said);
    if (!isStressed || heard.length !== units.length) continue;
    const moved = heard.map((unit, i) => isWeakR(unit, i, heard) && isStressed[i] && !isWeak(units[i]!));
    if (!moved.includes(true)) continue;
    yield [
      word,
      heard.map((unit, i) => writeUnit(moved[i] ? { ...units[i]!, heard: undefined } : unit)).join(' '),
    ];
  }
}

/** Whether a unit is a weak vowel before r: the or of territory, the a of library. */
function isWeakR({ letters, sound, heard }: WordSpelling, i: number, all: readonly WordSpelling[]): boolean {
  if (heard === 'AX') return sound !== 'ER' && /r$/.test(letters);
  return `${letters}:${sound}` === 'a:AX' && all[i + 1]?.sound === 'R';
}

function writeUnit({ letters, sound, heard }: WordSpelling): string {
  return `${letters}:${sound}${heard === undefined ? '' : `=${heard}`}`;
}

/**
 * Returns for each unit whether its first vowel is stressed, according to the pronunciation the units were made from.
 * The only vowel of a word counts as stressed. A secondary stress counts for the er of expert, but not before a vowel,
 * since CMUdict also has one on the er of liberal.
 */
function stressOf(
  word: string,
  units: readonly Correspondence[],
  variants: readonly (readonly string[])[],
): boolean[] | null {
  const sounds = units.flatMap(({ sound }) => (sound === '-' ? [] : sound.split('.')));
  for (const phones of variants) {
    const clean = cleanWithStress(word, phones);
    if (clean.sounds.length !== sounds.length || !sameSounds(clean.sounds, sounds)) continue;
    const isOnly = clean.stress.filter((one) => one !== '').length === 1;
    let at = 0;
    return units.map(({ sound }, i) => {
      const own = clean.stress[at] ?? '';
      if (sound !== '-') at += sound.split('.').length;
      return (
        isOnly ||
        own === '1' ||
        (own === '2' && sound === 'ER' && !hasVowel(units[i + 1]?.sound.split('.')[0] ?? ''))
      );
    });
  }
  return null;
}
