import type { Fit } from '../analyze/index.ts';

/** When a text reads for a group at a step: “reads now”, “reads after 2 more steps”. */
export function describeFit({ now, step }: Fit, at: number): string {
  if (now) return 'reads now';
  if (step === null) return 'not within the sequence';
  return step - at === 1 ? 'reads after the next step' : `reads after ${step - at} more steps`;
}

/** The same in short, for a table: “now”, “step 14 (+2)”, “not yet”. */
export function describeFitShort({ now, step }: Fit, at: number): string {
  if (now) return 'now';
  return step === null ? 'not in sequence' : `at step ${step} (+${step - at})`;
}

/** 97.3%, and 100% without a fraction. */
export function sayReach(reach: number): string {
  return `${reach.toFixed(reach === 100 ? 0 : 1)}%`;
}

/** “one word”, “1,204 words”. */
export function sayWords(n: number): string {
  return n === 1 ? 'one word' : `${n.toLocaleString('en')} words`;
}
