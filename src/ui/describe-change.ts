import type { Affix } from '../analyze/types.ts';
import { say, type TextId } from '../wording/say.ts';

const CHANGES = {
  none: null,
  double: 'ui.doubled',
  'drop-e': 'ui.eDropped',
  'y-to-i': 'ui.yBecomesI',
  'f-to-v': 'ui.fBecomesV',
} as const satisfies Record<Affix['change'], TextId | null>;

/** What was done to the base: `hope + ing, the e is dropped`; empty for a word that is no more than itself. */
export function describeMaking(base: string | null, affixes: readonly Affix[]): string {
  if (base === null) return '';
  const before = affixes.filter(({ kind }) => kind === 'prefix').map(({ text }) => text);
  const after = affixes.filter(({ kind }) => kind !== 'prefix').map(({ text }) => text);
  const changes = affixes.map(({ change }) => CHANGES[change]).filter((change) => change !== null);
  return [[...before.reverse(), base, ...after].join(' + '), ...changes.map((id) => say(id))].join(', ');
}
