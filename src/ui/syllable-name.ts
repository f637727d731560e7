import type { SyllableType } from '../analyze/types.ts';

const NAMES: Readonly<Record<SyllableType, string>> = {
  closed: 'closed',
  open: 'open',
  vce: 'vowel-consonant-e',
  team: 'vowel team',
  'r-controlled': 'r-controlled',
  'consonant-le': 'consonant-le',
  other: 'of no regular type',
};

/** What the trade calls a type of syllable. */
export function syllableName(type: SyllableType): string {
  return NAMES[type];
}
