import { percentRead, type WordCounts } from '../standing/vet.ts';
import type { Climber } from './create-climber.ts';
import { READING_LEVELS } from './reading-levels.ts';

/**
 * A text measured along a group's sequence. Every list has one entry for each step, from 0 (before the first step) to
 * the last.
 */
export interface Climb {
  /**
   * Percent of running words the group can read at the step, with one decimal. The same as the result of `tallyText` at
   * that step.
   */
  readonly reach: readonly number[];
  /**
   * Number of running words that become readable at the step. The entry at 0 counts those readable before the first
   * step.
   */
  readonly opens: readonly number[];
  /** The first step with a reach of at least 95, the mark for reading with help. Null if there is none. */
  readonly withHelp: number | null;
  /** The first step with a reach of at least 99, the mark for reading alone. Null if there is none. */
  readonly alone: number | null;
  /**
   * The step (from 1) that makes the most words readable. The earliest step wins a tie. Null if no step makes any word
   * readable.
   */
  readonly opensMost: number | null;
}

/**
 * Follows a text through all steps in one pass over its words: `climbText(counts, createClimber(analyzer, group,
 * sequence))`. The current step of the group makes no difference. Reach may fall slightly at a step where a name begins
 * to count because the group can read one of two words with its spelling.
 */
export function climbText({ words }: WordCounts, climber: Climber): Climb {
  const opens = new Array<number>(climber.steps + 1).fill(0);
  const starts = opens.slice();
  for (const [key, count] of words) {
    const { reads, counts } = climber(key);
    if (reads !== null) opens[reads]! += count;
    if (counts !== null) starts[counts]! += count;
  }
  let readable = 0;
  let running = 0;
  const reach = opens.map((opened, step) => {
    readable += opened;
    running += starts[step]!;
    return percentRead(readable, running);
  });
  const most = Math.max(0, ...opens.slice(1));
  return {
    reach,
    opens,
    withHelp: firstFrom(reach, READING_LEVELS.withHelp),
    alone: firstFrom(reach, READING_LEVELS.alone),
    opensMost: most === 0 ? null : opens.indexOf(most, 1),
  };
}

function firstFrom(reach: readonly number[], mark: number): number | null {
  const step = reach.findIndex((percent) => percent >= mark);
  return step < 0 ? null : step;
}
