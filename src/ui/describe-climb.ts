import { CLIMB_MARKS, type Climb } from '../analyze/index.ts';
import type { Sequence } from '../analyze/types.ts';
import { stepTitle } from './step-title.ts';

/** A climb in words: where the group is, where reach comes to the marks, which step ahead opens most. */
export function describeClimb(climb: Climb, sequence: Sequence, step: number): string[] {
  const { reach, opens, withHelp, alone } = climb;
  const here = `${step === 0 ? 'Before the first step' : `At step ${step}`} the group can read ${reach[step]!.toFixed(1)}%.`;
  const marks = [
    [CLIMB_MARKS.withHelp, withHelp],
    [CLIMB_MARKS.alone, alone],
  ] as const;
  const met = marks.map(([mark, first]) => {
    if (first === null) return `It does not reach ${mark}% within this sequence.`;
    const verb = first <= step ? 'reached' : 'reaches';
    return `It ${verb} ${mark}% ${first === 0 ? 'before the first step' : `at ${nameStep(sequence, first)}`}.`;
  });
  const ahead = opens.slice(step + 1);
  if (ahead.length === 0) return [here, ...met];
  const most = Math.max(...ahead);
  if (most === 0) return [here, ...met, 'No step ahead opens a word of this text.'];
  const first = nameStep(sequence, step + 1 + ahead.indexOf(most));
  return [
    here,
    ...met,
    `Of the steps ahead, ${first} opens most: ${most === 1 ? '1 word' : `${most} words`}.`,
  ];
}

function nameStep(sequence: Sequence, step: number): string {
  return `step ${step} (${stepTitle(sequence, step)})`;
}
