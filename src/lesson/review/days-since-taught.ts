import type { Group, PatternId, Sequence } from '../../analyze/types.ts';

/** The length of a step, in days, where no date shows when it was taught: one step a week. */
const DAYS_A_STEP = 7;
const DAY = 86_400_000;

/** The number of days since each pattern of the sequence was first taught, and whether the days are known or estimated. */
export interface TaughtDays {
  readonly days: ReadonlyMap<PatternId, number>;
  /** Whether some of the days are estimates, at a week a step. */
  readonly estimated: boolean;
}

/**
 * Counts the days since each pattern was taught, from the dated steps of the group's history. Steps before the first
 * date count a week each, back from that date. Without any date they count back from the day. A pattern taught outside
 * the sequence is as old as the sequence's first step.
 */
export function daysSinceTaught(group: Group, sequence: Sequence | null, day: string): TaughtDays {
  const moves = (group.history ?? []).filter((move) => move.sequence === group.sequence);
  const dated = moves.filter(({ date }) => date > EVER);
  const undated = dated.length === 0 ? group.step : (moves.find(({ date }) => date <= EVER)?.step ?? 0);
  const ageOfDated = (step: number): number => {
    const move = dated.find((each) => each.step >= step);
    return move ? daysBetween(move.date, day) : 0;
  };
  const first = dated.length === 0 ? -DAYS_A_STEP : ageOfDated(undated + 1);
  const ageOf = (step: number): number =>
    step > undated ? ageOfDated(step) : first + DAYS_A_STEP * (undated - step + 1);
  const days = new Map<PatternId, number>();
  for (let step = 1; step <= group.step; step++) {
    for (const id of sequence?.steps[step - 1]?.teaches ?? []) if (!days.has(id)) days.set(id, ageOf(step));
  }
  for (const id of group.alsoTaught) if (!days.has(id)) days.set(id, sequence ? ageOf(1) : 0);
  return { days, estimated: undated > 0 };
}

/** The date before which a step has no known day. Such steps are dated `0001-01-01`. */
const EVER = '0002';

function daysBetween(from: string, to: string): number {
  const days = (Date.parse(to) - Date.parse(from)) / DAY;
  return Number.isFinite(days) ? Math.max(0, Math.round(days)) : 0;
}
