/**
 * A rule of language, one row of an ordered list: the first rule that applies counts. Tests read the lists (each example meets its
 * rule, each counter-example does not), and so does `npm run rules`, which writes RULES.md.
 */
export interface Rule<Place> {
  /** The rule in words, unlike every other of its list. */
  readonly name: string;
  /** A case of the rule, in the form its list says: a word, a word with its cuts, a sentence. */
  readonly example: string;
  /** A case that looks alike and does not come under the rule. */
  readonly counterExample: string;
  readonly applies: (place: Place) => boolean;
}

/** The first rule of a list that applies to a place; undefined where none does. */
export function findRule<Place, One extends Rule<Place>>(
  rules: readonly One[],
  place: Place,
): One | undefined {
  for (const rule of rules) if (rule.applies(place)) return rule;
  return undefined;
}
