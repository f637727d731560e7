import type { Affix } from '../analyze/types.ts';

const CHANGES: Readonly<Record<Affix['change'], string>> = {
  none: '',
  double: 'the last consonant is doubled',
  'drop-e': 'the e is dropped',
  'y-to-i': 'y becomes i',
};

/** What was done to the base: `hope + ing, the e is dropped`; empty for a word that is no more than itself. */
export function describeMaking(base: string | null, affixes: readonly Affix[]): string {
  if (base === null) return '';
  const before = affixes.filter(({ kind }) => kind === 'prefix').map(({ text }) => text);
  const after = affixes.filter(({ kind }) => kind !== 'prefix').map(({ text }) => text);
  const changes = affixes.map(({ change }) => CHANGES[change]).filter((change) => change !== '');
  return [[...before.reverse(), base, ...after].join(' + '), ...changes].join(', ');
}
