import { hasVowel, shownSound } from '../alignment/sounds.ts';
import { type BuiltWord, spellingsOf, type WordSpelling } from '../build/built-word.ts';
import { placeSpellings } from '../build/place-spellings.ts';
import { listRequirements, type ReadPart } from '../patterns/list-requirements.ts';
import { nameAffix, namePattern, type Surroundings } from '../patterns/name-pattern.ts';
import { divideWord } from '../syllables/divide-word.ts';
import { nameDivisions } from '../syllables/name-divisions.ts';
import type { Reading, ReadingSource, Unit } from '../types.ts';

/** The readings of the parts of words. A part is kept as long as the word table's cache keeps it. */
const partReadings = new WeakMap<BuiltWord, Reading>();

/** Returns the sound of each spelling of a word in an accent. */
export type Hear = (built: BuiltWord) => readonly string[];

/**
 * Names the patterns, syllables and requirements of a built word. Returns null when its spellings do not make the word.
 * The patterns follow the sounds of the table. `hear` returns the sounds where the accent is not the table's accent.
 */
export function finishReading(
  word: string,
  built: BuiltWord,
  source: ReadingSource,
  hear?: Hear,
): Reading | null {
  const spellings = spellingsOf(built);
  const starts = placeSpellings(word, spellings);
  if (!starts) return null;
  const { syllables, starts: cuts } = divideWord(word, built, starts);
  const named = nameUnits(built, spellings, starts, cuts);
  const units = hear ? withSounds(named, hear(built)) : named;
  const vowels = cuts.map((from, i) => {
    const to = cuts[i + 1] ?? word.length;
    return spellings.find(({ sound }, k) => starts[k]! >= from && starts[k]! < to && hasVowel(sound));
  });
  const parts = readParts(built, hear);
  return {
    pronunciation: pronounce(units),
    source,
    units,
    base: built.base,
    affixes: built.affixes,
    syllables,
    ...listRequirements(
      built,
      { word, units, syllables, vowels, divisions: nameDivisions(built, starts, cuts) },
      parts,
    ),
  };
}

/**
 * Returns the words that a word is made of, each with its own reading. Returns no words where one of them cannot be
 * read.
 */
function readParts({ from = [] }: BuiltWord, hear?: Hear): ReadPart[] {
  const parts: ReadPart[] = [];
  for (const { word, built } of from) {
    const reading = partReadings.get(built) ?? finishReading(word, built, 'dictionary', hear);
    if (!reading) return [];
    partReadings.set(built, reading);
    parts.push({ word, reading });
  }
  return parts;
}

function withSounds(units: readonly Unit[], sounds: readonly string[]): Unit[] {
  return units.map((unit, i) => ({ ...unit, sound: shownSound(sounds[i]!) }));
}

function pronounce(units: readonly Unit[]): string {
  let spoken = '';
  for (const { sound } of units) if (sound !== '-') spoken += spoken === '' ? sound : ` ${sound}`;
  return spoken.includes('.') ? spoken.replaceAll('.', ' ') : spoken;
}

function nameUnits(
  built: BuiltWord,
  spellings: readonly WordSpelling[],
  starts: readonly number[],
  cuts: readonly number[],
): Unit[] {
  const units: Unit[] = [];
  for (const [p, { role, spellings: own }] of built.parts.entries()) {
    const endsBefore = /suffix|clitic/.test(built.parts[p + 1]?.role ?? '') ? own.at(-1) : undefined;
    for (const one of own) {
      const { letters, sound, spells } = one;
      const i = units.length;
      const shown = shownSound(sound);
      if (role === 'prefix' || role === 'suffix') {
        units.push({
          letters,
          sound: shown,
          pattern: nameAffix(role, spells ?? letters, sound),
          affix: role,
        });
      } else if (role === 'clitic') {
        units.push({ letters, sound: shown, pattern: cliticPattern(built), affix: 'suffix' });
      } else if (letters === "'") {
        units.push({ letters, sound: shown, pattern: 'contraction' });
      } else {
        const around = {
          before: spellings[i - 1],
          after: spellings[i + 1],
          open: one === endsBefore || i === spellings.length - 1 || cuts.includes(starts[i + 1]!),
          firstSyllable: starts[i]! < (cuts[1] ?? Infinity),
        };
        units.push({ letters, sound: shown, pattern: nameInBase(one, around) });
      }
    }
  }
  return units;
}

interface BasePlace extends Surroundings {
  readonly before: WordSpelling | undefined;
  readonly after: WordSpelling | undefined;
}

function nameInBase({ letters, sound, spells, said, wasSuffix }: WordSpelling, around: BasePlace): string {
  const spoken = said ?? (sound === '-' ? spokenSound(letters, around.before, around.after) : sound);
  return wasSuffix
    ? nameAffix('suffix', spells ?? letters, spoken)
    : namePattern(spells ?? letters, spoken, around);
}

function cliticPattern({ affixes }: BuiltWord): string {
  return affixes.at(-1)?.kind === 'possessive' ? 'possessive' : 'contraction';
}

/**
 * Returns the sound of a letter that is pronounced once together with the affix: the l of finally, and the l of
 * illegal. The letter is known by the sound it would have.
 */
function spokenSound(
  letters: string,
  before: WordSpelling | undefined,
  after: WordSpelling | undefined,
): string {
  if (after && after.letters[0] === letters[0]) return after.sound.split('.')[0]!;
  if (before?.sound.includes('.') && before.letters.at(-1) === letters)
    return before.sound.split('.').at(-1)!;
  return '-';
}
