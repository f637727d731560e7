import { CLIMB_MARKS, type Climb } from '../analyze/index.ts';
import type { Sequence } from '../analyze/types.ts';
import { stepTitle } from './step-title.ts';

/** A climb in words: where the group is, where reach comes to the marks, which step opens most. */
export function describeClimb(climb: Climb, sequence: Sequence, step: number): string[] {
  const { reach, opens, withHelp, alone, opensMost } = climb;
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
  if (opensMost === null) return [here, ...met, 'No step opens a word of this text.'];
  const words = opens[opensMost] === 1 ? '1 word' : `${opens[opensMost]} words`;
  return [here, ...met, `${upperFirst(nameStep(sequence, opensMost))} opens most: ${words}.`];
}

function nameStep(sequence: Sequence, step: number): string {
  return `step ${step} (${stepTitle(sequence, step)})`;
}

function upperFirst(text: string): string {
  return text[0]!.toUpperCase() + text.slice(1);
}
