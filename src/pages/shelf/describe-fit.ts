import type { Fit } from '../../analyze/index.ts';
import { say } from '../../wording/say.ts';

/** Returns a phrase that says when a group at a step can read a text: “reads now”, “reads after 2 more steps”. */
export function describeFit({ now, step }: Fit, at: number): string {
  if (now) return say('shelf.readsNow');
  if (step === null) return say('shelf.notWithin');
  return say('shelf.readsAfter', { count: step - at });
}

/** Returns a short phrase for a table that says when a text is readable: “now”, “ready at step 14”, “not yet”. */
export function describeFitShort({ now, step }: Fit): string {
  if (now) return say('ui.now');
  return step === null ? say('shelf.notInSequence') : say('shelf.atStepAhead', { step });
}

/** Formats a reach with one decimal place, as in 97.3%, but 100% without a fraction. */
export function sayReach(reach: number): string {
  return `${reach.toFixed(reach === 100 ? 0 : 1)}%`;
}

/** Formats a number of words: “one word”, “1,204 words”. */
export function sayWords(n: number): string {
  return say('shelf.words', { count: n });
}
