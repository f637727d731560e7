import type { Group } from '../types.ts';

/** Number of steps that count as a group's next steps. */
export const NEXT_STEPS = 5;

/**
 * Returns the group after its next steps. The new step is at most `steps`, the length of the group's sequence: a group
 * at step ten of a sequence of twelve is then at step twelve. A taught pattern that is not secure yet then counts as
 * secure.
 */
export function groupAhead(group: Group, steps: number): Group {
  return { ...group, step: Math.min(group.step + NEXT_STEPS, steps), notYet: [] };
}
