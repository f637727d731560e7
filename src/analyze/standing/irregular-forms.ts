import forms from './irregular-forms.json' with { type: 'json' };

/** Bases and their irregular forms: went belongs to go, children to child. */
const formsOf: ReadonlyMap<string, readonly string[]> = new Map(Object.entries(forms));

/** Returns the irregular forms of a base in lower case (go: goes gone went). A regular base (want) has none. */
export function irregularForms(base: string): readonly string[] {
  return formsOf.get(base) ?? [];
}

/** Returns all bases that have irregular forms. */
export function irregularBases(): readonly string[] {
  return [...formsOf.keys()];
}
