import type { Affix, Reading, SpellingChange } from '../../analyze/types.ts';

const CHANGES: Readonly<Record<SpellingChange, string>> = {
  none: '',
  double: 'last letter doubled',
  'drop-e': 'e dropped',
  'y-to-i': 'y changed to i',
  'f-to-v': 'f changed to v',
};

/**
 * Returns the parts of a built word, from the base outwards: `sail + or`, `un + happy`, `bake + er (e dropped)`.
 * Returns an empty text for a word that is not built (quay).
 */
export function showParts({ base, affixes }: Pick<Reading, 'base' | 'affixes'>): string {
  if (base === null) return '';
  const isBefore = ({ kind }: Affix): boolean => kind === 'prefix';
  const pieces = [
    ...affixes.filter(isBefore).toReversed(),
    { text: base },
    ...affixes.filter((affix) => !isBefore(affix)),
  ].map(({ text }) => text);
  const changes = affixes.map(({ change }) => CHANGES[change]).filter((text) => text !== '');
  return pieces.join(' + ') + (changes.length > 0 ? ` (${changes.join(', ')})` : '');
}
