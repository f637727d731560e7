/**
 * A language rule in an ordered list. The first rule that applies counts. Tests check every list: each example must
 * meet its rule, and each counter-example must not. `npm run rules` also reads the lists and writes RULES.md.
 */
export interface Rule<Place> {
  /** The rule in words. No other rule in the list has the same name. */
  readonly name: string;
  /** A case of the rule, in the form its list says: a word, a word with its cuts, a sentence. */
  readonly example: string;
  /** A similar case to which the rule does not apply. */
  readonly counterExample: string;
  readonly applies: (place: Place) => boolean;
}

/** Returns the first rule of a list that applies to a place, or undefined if none applies. */
export function findRule<Place, One extends Rule<Place>>(
  rules: readonly One[],
  place: Place,
): One | undefined {
  for (const rule of rules) if (rule.applies(place)) return rule;
  return undefined;
}
