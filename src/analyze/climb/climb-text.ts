import { percentRead, type WordCounts } from '../standing/vet.ts';
import type { Climber } from './create-climber.ts';
import { READING_LEVELS } from './reading-levels.ts';

/** A text along a group's sequence. Every list has an entry for each step from 0, before the first, to the last. */
export interface Climb {
  /** Percent of running words the group can read at the step, one decimal; what `tallyText` says for it there. */
  readonly reach: readonly number[];
  /** Running words the group comes to read at the step; at 0, those it reads before the first step. */
  readonly opens: readonly number[];
  /** The first step with a reach of 95 or more, with which a text is read with help; null if none. */
  readonly withHelp: number | null;
  /** The first step with a reach of 99 or more, with which a text is read alone; null if none. */
  readonly alone: number | null;
  /** The step from 1 on that opens most, the first of equals; null if none opens anything. */
  readonly opensMost: number | null;
}

/**
 * Follows a text through all steps, in one pass over its words: `climbText(counts, createClimber(analyzer, group, sequence))`.
 * The step the group is at does not matter. Reach may fall by a little where a name comes to be read as a word
 * that is spelt alike in two ways.
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
