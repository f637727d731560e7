import type { WordForm } from './types.ts';

const DETERMINERS =
  /^(the|an?|this|these|those|my|your|his|her|its|our|their|some|any|no|every|each|many|few|several|two|three|four|five|six|ten)$/;
const BE = /^(am|is|are|was|were|be|been|being)$/;
const MODALS = /^(will|would|can|could|may|might|must|should|shall|cannot|can't|won't|don't|didn't|doesn't)$/;
const PREPOSITIONS = /^(of|in|on|at|by|with|for|from|into|between|against|through|during)$/;
const OBJECTS = /^(the|an?|this|these|those|my|your|his|its|our|their|it|them|him|us|me|you)$/;

/** The penalty, in log odds, for a reading that grammar speaks against. */
const UNLIKELY = -3;

/**
 * Returns the evidence against a reading that the words just before and after give, or 0 for none. These readings are
 * unlikely:
 * - a verb in -s after a form of be (the towns are rivals) or a determiner
 * - a plain verb after a determiner
 * - a noun after a modal (may harm)
 * - an adjective before an article or a possessive (celebrated its birthday), unless a form of be is before the
 * adjective
 */
export function ruleOut(reading: WordForm, before: string, after: string): number {
  if (reading.part === 'v') return isNoVerb(reading.form, before) ? UNLIKELY : 0;
  if (MODALS.test(before) && reading.part !== 'r') return UNLIKELY;
  if (reading.part === 'a') return ruleOutAdjective(before, after);
  const isOfVerb = before === 'to' && OBJECTS.test(after);
  return reading.part === 'n' && reading.form === 'base' && isOfVerb ? UNLIKELY : 0;
}

function isNoVerb(form: WordForm['form'], before: string): boolean {
  if (form !== 's' && form !== 'base') return false;
  if (DETERMINERS.test(before) || PREPOSITIONS.test(before) || BE.test(before)) return true;
  return form === 's' && (MODALS.test(before) || before === 'to');
}

function ruleOutAdjective(before: string, after: string): number {
  if (OBJECTS.test(after) && !BE.test(before)) return UNLIKELY;
  return after === 'of' && (DETERMINERS.test(before) || BE.test(before)) ? UNLIKELY / 2 : 0;
}
