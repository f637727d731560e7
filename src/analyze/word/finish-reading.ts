import { shownSound } from '../alignment/sounds.ts';
import { type BuiltWord, spellingsOf, type WordSpelling } from '../build/built-word.ts';
import { placeSpellings } from '../build/place-spellings.ts';
import { listRequirements } from '../patterns/list-requirements.ts';
import { nameAffix, namePattern } from '../patterns/name-pattern.ts';
import { divideWord } from '../syllables/divide-word.ts';
import type { Reading, ReadingSource, Unit } from '../types.ts';

/** Names the patterns, syllables and requirements of a built word; null when its spellings are not the word. */
export function finishReading(word: string, built: BuiltWord, source: ReadingSource): Reading | null {
  const starts = placeSpellings(word, spellingsOf(built));
  if (!starts) return null;
  const { syllables, starts: cuts } = divideWord(word, built, starts);
  const units = nameUnits(built, starts, cuts);
  return {
    pronunciation: pronounce(built),
    source,
    units,
    base: built.base,
    affixes: built.affixes,
    syllables,
    requires: listRequirements(built, units, syllables),
  };
}

function pronounce(built: BuiltWord): string {
  return spellingsOf(built)
    .filter(({ sound }) => sound !== '-')
    .map(({ sound }) => shownSound(sound).replaceAll('.', ' '))
    .join(' ');
}

function nameUnits(built: BuiltWord, starts: readonly number[], cuts: readonly number[]): Unit[] {
  const all = spellingsOf(built);
  const lastAffix = built.affixes.at(-1)?.kind;
  const roles = built.parts.flatMap((part) => part.spellings.map(() => part.role));
  return all.map(({ letters, sound, spells }, i): Unit => {
    const role = roles[i]!;
    const shown = { letters, sound: shownSound(sound) };
    if (role === 'prefix' || role === 'suffix') {
      return { ...shown, pattern: nameAffix(role, spells ?? letters, sound), affix: role };
    }
    if (role === 'clitic')
      return {
        ...shown,
        pattern: lastAffix === 'possessive' ? 'possessive' : 'contraction',
        affix: 'suffix',
      };
    if (letters === "'") return { ...shown, pattern: 'contraction' };
    const before = all[i - 1];
    const after = all[i + 1];
    const around = {
      before,
      after,
      open: cuts.includes(starts[i + 1]!) || i === all.length - 1 || roles[i + 1] === 'suffix',
      firstSyllable: starts[i]! < (cuts[1] ?? Infinity),
    };
    return {
      ...shown,
      pattern: namePattern(spells ?? letters, spokenSound(sound, letters, before, after), around),
    };
  });
}

/** The l of finally and that of illegal, said once with the affix, are known by the sound they would have. */
function spokenSound(
  sound: string,
  letters: string,
  before: WordSpelling | undefined,
  after: WordSpelling | undefined,
): string {
  if (sound !== '-') return sound;
  if (after && after.letters[0] === letters[0]) return after.sound.split('.')[0]!;
  if (before?.sound.includes('.') && before.letters.at(-1) === letters)
    return before.sound.split('.').at(-1)!;
  return sound;
}
