import { type Climb, READING_LEVELS } from '../analyze/index.ts';
import type { Sequence } from '../analyze/types.ts';
import { say } from '../wording/say.ts';
import { stepTitle } from './step-title.ts';

/**
 * Describes a climb in sentences: the current step of the group, the steps at which reach meets the marks, and the
 * later step that opens most.
 */
export function describeClimb(climb: Climb, sequence: Sequence, step: number): string[] {
  const { reach, opens, withHelp, alone } = climb;
  const now = { percent: reach[step]!.toFixed(1) };
  const here = step === 0 ? say('ui.climbAtFirst', now) : say('ui.climbNow', { ...now, step });
  const marks = [
    [READING_LEVELS.withHelp, withHelp],
    [READING_LEVELS.alone, alone],
  ] as const;
  const met = marks.map(([mark, first]) => {
    if (first === null) return say('ui.climbNever', { mark });
    if (first === 0) return say('ui.climbReachedFirst', { mark });
    const where = { mark, step: nameStep(sequence, first) };
    return first <= step ? say('ui.climbReached', where) : say('ui.climbReaches', where);
  });
  const ahead = opens.slice(step + 1);
  if (ahead.length === 0) return [here, ...met];
  const most = Math.max(...ahead);
  if (most === 0) return [here, ...met, say('ui.climbNothingAhead')];
  const first = nameStep(sequence, step + 1 + ahead.indexOf(most));
  return [here, ...met, say('ui.climbMost', { step: first, count: most })];
}

function nameStep(sequence: Sequence, step: number): string {
  return say('ui.climbStep', { step, title: stepTitle(sequence, step) });
}
