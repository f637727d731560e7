import type { Group } from '../types.ts';

/** How many steps ahead of a group count as its next ones. */
export const NEXT_STEPS = 5;

/**
 * The group after its next steps, at most `steps` (the length of its sequence): with ten steps of a sequence of twelve behind it, at
 * the twelfth. A pattern that was taught but is not secure counts as secure by then.
 */
export function groupAhead(group: Group, steps: number): Group {
  return { ...group, step: Math.min(group.step + NEXT_STEPS, steps), notYet: [] };
}
