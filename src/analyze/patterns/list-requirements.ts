import { countVowels } from '../alignment/sounds.ts';
import type { BuiltWord, WordSpelling } from '../build/built-word.ts';
import type { PatternId, Syllable, SyllableType, Unit } from '../types.ts';
import { findBlends } from './find-blends.ts';

const TYPE_ROWS: Partial<Record<SyllableType, PatternId>> = {
  closed: 'type-closed',
  open: 'type-open',
  vce: 'type-vce',
  team: 'type-team',
  'r-controlled': 'type-r',
};
const CHANGE_ROWS: Readonly<Record<string, PatternId>> = {
  double: 'change-double',
  'drop-e': 'change-drop-e',
  'y-to-i': 'change-y-to-i',
};

/**
 * All patterns a reader needs for one reading, sorted, without repeats: those of its units, the blends of its
 * bases, the spelling changes, the length of its longest base in syllables, the syllable types of a longer
 * word, and what kind of word it is (compound, contraction, possessive).
 */
export function listRequirements(
  built: BuiltWord,
  units: readonly Unit[],
  syllables: readonly Syllable[],
): PatternId[] {
  const ids = new Set<PatternId>(units.map((unit) => unit.pattern));
  let longest = 0;
  for (const part of built.parts) {
    if (part.role !== 'base') continue;
    for (const id of findBlends(part.spellings)) ids.add(id);
    longest = Math.max(longest, countSyllables(part.spellings));
  }
  if (longest === 2) ids.add('syllables-2');
  if (longest > 2) ids.add('syllables-3');
  if (longest > 1) for (const { type } of syllables) addIf(ids, TYPE_ROWS[type]);
  for (const { kind, change } of built.affixes) {
    addIf(ids, CHANGE_ROWS[change]);
    if (kind === 'compound' || kind === 'contraction' || kind === 'possessive') ids.add(kind);
  }
  return [...ids].sort();
}

function addIf(ids: Set<PatternId>, id: PatternId | undefined): void {
  if (id) ids.add(id);
}

/** Syllables as letters show them: fire is one, prism is one. */
function countSyllables(spellings: readonly WordSpelling[]): number {
  return spellings.reduce((sum, { letters, sound }) => {
    const vowels = /[aeiouy]/.test(letters) ? countVowels(sound) : 0;
    return sum + (/^(ire|our|yre|owe)$/.test(letters) ? Math.min(vowels, 1) : vowels);
  }, 0);
}
