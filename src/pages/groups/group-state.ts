import type { Group, PatternId, Sequence } from '../../analyze/types.ts';
import { say, type TextId } from '../../wording/say.ts';

/** The two lists of patterns a group has besides its steps. */
export type PatternList = 'alsoTaught' | 'notYet';

/** Says which change was made in a group. */
export type EditText = Extract<TextId, `groups.changed${string}`>;

export const EDIT_TEXTS = {
  alsoTaught: 'groups.changedPatterns',
  notYet: 'groups.changedExceptions',
} as const satisfies Record<PatternList, EditText>;

/** The group with a pattern put on one list; no pattern is on both. */
export function putPattern(group: Group, list: PatternList, pattern: PatternId): Group {
  const other = list === 'alsoTaught' ? 'notYet' : 'alsoTaught';
  return { ...takePattern(group, other, pattern), [list]: [...group[list], pattern] };
}

/** The group with a pattern taken off a list. */
export function takePattern(group: Group, list: PatternList, pattern: PatternId): Group {
  return { ...group, [list]: group[list].filter((one) => one !== pattern) };
}

/** Says in which step a group comes to a pattern, or came to it; nothing where no step teaches it. */
export function placeOf(pattern: PatternId, group: Group, sequence: Sequence | null): string {
  const step = sequence?.steps.findIndex(({ teaches }) => teaches.includes(pattern)) ?? -1;
  if (step < 0) return '';
  return say(step < group.step ? 'groups.inTaughtStep' : 'groups.inStep', { step: step + 1 });
}

/** Whether a group may be deleted: one always stays. */
export function mayDelete(groups: Readonly<Record<string, Group>>): boolean {
  return Object.keys(groups).length > 1;
}
