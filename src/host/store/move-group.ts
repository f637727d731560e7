import type { Group, Sequence, StepMove } from '../../analyze/types.ts';

/**
 * Puts a group at a step, of another sequence when one is given, and notes it under the day; a second move on the
 * same day is noted after the first. The step before the first move is noted too, as of the beginning of time.
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

/** The group as it was at the end of a day, as far as its moves tell: its step and sequence; the rest as it is now. */
export function groupOn(group: Group, day: string): Group {
  const move = group.history?.findLast(({ date }) => date <= day);
  return move ? { ...group, step: move.step, sequence: move.sequence } : group;
}

/** The moves of a group that have a day of their own, the latest first. */
export function datedMoves(group: Group): readonly StepMove[] {
  return (group.history ?? []).filter(({ date }) => date !== EVER).toReversed();
}

/** The day it is here, as `2026-11-25`. */
export function today(): string {
  return dayOf(new Date());
}

/** The local date of a time, as `2026-11-25`. */
export function dayOf(time: Date): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;
}

/** A step beyond its sequence (it was shortened) counts as the last. */
export function withinSequence(group: Group, sequence: Sequence | null): Group {
  return { ...group, step: Math.min(group.step, sequence?.steps.length ?? 0) };
}

/** For a step whose day nobody noted: earlier than any. */
const EVER = '0001-01-01';
