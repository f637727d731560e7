import type { PatternId, SequenceStep } from '../../analyze/types.ts';
import { say } from '../../wording/say.ts';

/** Steps after a change, and where a group that was at a step before (0: before the first) is now. */
export interface EditedSteps {
  readonly steps: readonly SequenceStep[];
  readonly place: (step: number) => number;
}

/** Changes the steps of the sequence that is shown; `says` tells the change, in the teacher's language. */
export type EditSteps = (says: string, change: (steps: Steps) => EditedSteps) => Promise<void>;

type Steps = readonly SequenceStep[];

const stay = (step: number): number => step;

/** Replaces one step by a function of it. */
export function changeStep(
  steps: Steps,
  at: number,
  change: (step: SequenceStep) => SequenceStep,
): EditedSteps {
  return { steps: steps.map((step, i) => (i === at ? change(step) : step)), place: stay };
}

/** Teaches a pattern in a step; where it was taught before, it is no longer, since a pattern is taught once. */
export function teachIn(steps: Steps, at: number, id: PatternId): EditedSteps {
  return {
    steps: steps.map((step, i) => {
      const teaches = step.teaches.filter((other) => other !== id);
      return { ...step, teaches: i === at ? [...teaches, id] : teaches };
    }),
    place: stay,
  };
}

/** Puts a step before the one that is at `at`. */
export function insertStep(steps: Steps, at: number, step: SequenceStep): EditedSteps {
  return { steps: steps.toSpliced(at, 0, step), place: (now) => (now > at ? now + 1 : now) };
}

/** Takes a step out; groups that were taught it keep the others. */
export function removeStep(steps: Steps, at: number): EditedSteps {
  return { steps: steps.toSpliced(at, 1), place: (now) => (now > at ? now - 1 : now) };
}

/** Moves a step; a group keeps the steps it was taught as far as they stand together. */
export function moveStep(steps: Steps, from: number, to: number): EditedSteps {
  const moved = steps[from];
  if (!moved) return { steps, place: stay };
  return {
    steps: steps.toSpliced(from, 1).toSpliced(to, 0, moved),
    place: (now) => (from < now && to >= now ? now - 1 : from >= now && to < now ? now + 1 : now),
  };
}

/** Parts a step in two: half of its patterns, or with one pattern its by-sight words, go to a step behind it. */
export function splitStep(steps: Steps, at: number): EditedSteps {
  const step = steps[at];
  if (!step || !canSplit(step)) return { steps, place: stay };
  const { teaches, bySight } = step;
  const middle = teaches.length > 1 ? Math.ceil(teaches.length / 2) : teaches.length;
  const words = teaches.length > 1 || teaches.length === 0 ? Math.ceil(bySight.length / 2) : 0;
  const first = { ...step, teaches: teaches.slice(0, middle), bySight: bySight.slice(0, words) };
  const { title: _, ...untitled } = step;
  const second = { ...untitled, teaches: teaches.slice(middle), bySight: bySight.slice(words) };
  return {
    steps: steps.toSpliced(at, 1, first, second),
    place: (now) => (now > at ? now + 1 : now),
  };
}

/** Whether there is something to part. */
export function canSplit({ teaches, bySight }: SequenceStep): boolean {
  return teaches.length + bySight.length > 1;
}

/** Makes one step of a step and the next; a group that was at the first is at both. */
export function mergeSteps(steps: Steps, at: number): EditedSteps {
  const [first, second] = [steps[at], steps[at + 1]];
  if (!first || !second) return { steps, place: stay };
  const title = [first.title, second.title].filter(Boolean).join('; ');
  const merged = {
    ...(title === '' ? {} : { title }),
    teaches: [...first.teaches, ...second.teaches],
    bySight: [...new Set([...first.bySight, ...second.bySight])],
  };
  return { steps: steps.toSpliced(at, 2, merged), place: (now) => (now > at + 1 ? now - 1 : now) };
}

/** Puts a step of the same title behind a step; it teaches nothing yet, since a pattern is taught once. */
export function duplicateStep(steps: Steps, at: number): EditedSteps {
  const title = steps[at]?.title;
  return insertStep(steps, at + 1, {
    ...(title === undefined ? {} : { title: say('sequences.againTitle', { title }) }),
    teaches: [],
    bySight: [],
  });
}
