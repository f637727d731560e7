import type { Group, Sequence, StepMove } from '../../analyze/types.ts';

/**
 * Moves a group to a step, and to another sequence when one is given. Records the move under the day; a second move on
 * the same day is recorded after the first. The first move also records the step before it, dated at the beginning of
 * time.
 */
export function moveGroup(
  group: Group,
  to: { readonly step: number; readonly sequence?: string | null },
  day: string,
): Group {
  const { step, sequence = group.sequence } = to;
  const before = group.history ?? [{ date: EVER, sequence: group.sequence, step: group.step }];
  const history: StepMove[] = [
    ...before.filter(({ date }) => date <= day),
    { date: day, sequence, step },
    ...before.filter(({ date }) => date > day),
  ];
  return { ...group, step, sequence, history };
}

/**
 * Returns the group as of the end of a day, as far as its recorded moves tell. The step and the sequence are from that
 * day; the rest is as it is now.
 */
export function groupOn(group: Group, day: string): Group {
  const move = group.history?.findLast(({ date }) => date <= day);
  return move ? { ...group, step: move.step, sequence: move.sequence } : group;
}

/** Returns the dated moves of a group, the latest first. */
export function datedMoves(group: Group): readonly StepMove[] {
  return (group.history ?? []).filter(({ date }) => date !== EVER).toReversed();
}

/** The local date of today, as `2026-11-25`. */
export function today(): string {
  return dayOf(new Date());
}

/** The local date of a time, as `2026-11-25`. */
export function dayOf(time: Date): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;
}

/** Limits the step of a group to its sequence. A step beyond the end of a shortened sequence counts as the last step. */
export function withinSequence(group: Group, sequence: Sequence | null): Group {
  return { ...group, step: Math.min(group.step, sequence?.steps.length ?? 0) };
}

/** The date of a step whose day nobody recorded. It is earlier than any other date. */
const EVER = '0001-01-01';
