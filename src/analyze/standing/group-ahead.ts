import type { Group } from '../types.ts';

/** Number of steps that count as a group's next steps. */
export const NEXT_STEPS = 5;

/**
 * Returns the group after its next steps. Its step is at most `steps` (the length of its sequence): with ten steps of a
 * sequence of twelve behind it, the group is then at the twelfth. By then, a taught pattern that is not secure counts
 * as secure.
 */
export function groupAhead(group: Group, steps: number): Group {
  return { ...group, step: Math.min(group.step + NEXT_STEPS, steps), notYet: [] };
}
