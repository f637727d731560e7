import type { Group, PatternId, Sequence } from '../../analyze/types.ts';
import { say, type TextId } from '../../wording/say.ts';

/** The two lists of patterns that a group has in addition to its steps. */
export type PatternList = 'alsoTaught' | 'notYet';

/** Text ids that say which change was made to a group. */
export type EditText = Extract<TextId, `groups.changed${string}`>;

export const EDIT_TEXTS = {
  alsoTaught: 'groups.changedPatterns',
  notYet: 'groups.changedExceptions',
} as const satisfies Record<PatternList, EditText>;

/** Returns the group with a pattern added to one list and removed from the other. */
export function putPattern(group: Group, list: PatternList, pattern: PatternId): Group {
  const other = list === 'alsoTaught' ? 'notYet' : 'alsoTaught';
  return { ...takePattern(group, other, pattern), [list]: [...group[list], pattern] };
}

/** Returns the group with a pattern removed from a list. */
export function takePattern(group: Group, list: PatternList, pattern: PatternId): Group {
  return { ...group, [list]: group[list].filter((one) => one !== pattern) };
}

/** Says in which step a group reaches a pattern or has been taught it. Empty if no step teaches the pattern. */
export function placeOf(pattern: PatternId, group: Group, sequence: Sequence | null): string {
  const step = sequence?.steps.findIndex(({ teaches }) => teaches.includes(pattern)) ?? -1;
  if (step < 0) return '';
  return say(step < group.step ? 'groups.inTaughtStep' : 'groups.inStep', { step: step + 1 });
}

/** Returns whether a group may be deleted. The last group may not. */
export function mayDelete(groups: Readonly<Record<string, Group>>): boolean {
  return Object.keys(groups).length > 1;
}
