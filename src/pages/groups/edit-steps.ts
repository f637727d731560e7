import type { PatternId, SequenceStep } from '../../analyze/types.ts';
import { say } from '../../wording/say.ts';

/** The steps after a change. `place` maps the old step of a group (0: before the first step) to its new step. */
export interface EditedSteps {
  readonly steps: readonly SequenceStep[];
  readonly place: (step: number) => number;
}

/** Changes the steps of the sequence that is shown. `says` describes the change in the teacher’s language. */
export type EditSteps = (says: string, change: (steps: Steps) => EditedSteps) => Promise<void>;

type Steps = readonly SequenceStep[];

const stay = (step: number): number => step;

/** Replaces the step at `at` with the result of `change`. */
export function changeStep(
  steps: Steps,
  at: number,
  change: (step: SequenceStep) => SequenceStep,
): EditedSteps {
  return { steps: steps.map((step, i) => (i === at ? change(step) : step)), place: stay };
}

/** Teaches a pattern in one step and removes it from all others, since a pattern is taught once. */
export function teachIn(steps: Steps, at: number, id: PatternId): EditedSteps {
  return {
    steps: steps.map((step, i) => {
      const teaches = step.teaches.filter((other) => other !== id);
      return { ...step, teaches: i === at ? [...teaches, id] : teaches };
    }),
    place: stay,
  };
}

/** Inserts a step before the step at index `at`. */
export function insertStep(steps: Steps, at: number, step: SequenceStep): EditedSteps {
  return { steps: steps.toSpliced(at, 0, step), place: (now) => (now > at ? now + 1 : now) };
}

/** Removes a step. Groups that were taught this step keep the other steps. */
export function removeStep(steps: Steps, at: number): EditedSteps {
  return { steps: steps.toSpliced(at, 1), place: (now) => (now > at ? now - 1 : now) };
}

/** Moves a step. A group keeps the other steps it was taught. */
export function moveStep(steps: Steps, from: number, to: number): EditedSteps {
  const moved = steps[from];
  if (!moved) return { steps, place: stay };
  return {
    steps: steps.toSpliced(from, 1).toSpliced(to, 0, moved),
    place: (now) => (from < now && to >= now ? now - 1 : from >= now && to < now ? now + 1 : now),
  };
}

/**
 * Splits a step in two. The second half of its patterns goes to a new step after it. If the step has only one pattern,
 * its by-sight words go to the new step.
 */
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

/** Returns whether a step has enough content to be split. */
export function canSplit({ teaches, bySight }: SequenceStep): boolean {
  return teaches.length + bySight.length > 1;
}

/** Merges a step with the next one. A group that was at the first step is now taught the contents of both steps. */
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

/** Inserts a step with the same title after a step. The new step teaches nothing yet, since a pattern is taught once. */
export function duplicateStep(steps: Steps, at: number): EditedSteps {
  const title = steps[at]?.title;
  return insertStep(steps, at + 1, {
    ...(title === undefined ? {} : { title: say('sequences.againTitle', { title }) }),
    teaches: [],
    bySight: [],
  });
}
