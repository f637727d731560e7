import nouns from './nouns.json' with { type: 'json' };

/** Nouns that take the same adjectives. Any of the adjectives goes with any of the nouns. */
export interface NounKind {
  readonly adjectives: string;
  readonly nouns: string;
}

/**
 * The adjectives that go with nouns: `a wet dog`, not `a ripe dog`. Nouns in no kind have no adjective.
 * Adjectives that fit only some nouns of a kind are in `ownAdjectives`.
 */
export const nounKinds: Readonly<Record<string, NounKind>> = nouns.kinds;

/** Adjectives that fit one noun but not all nouns of its kind. */
export const ownAdjectives: Readonly<Record<string, string>> = nouns.ownAdjectives;

/** Plurals that no spelling rule gives, such as `men`. The plurals hats and boxes follow a rule. */
export const irregularPlurals: Readonly<Record<string, string>> = nouns.irregularPlurals;

/** Things that are not counted. They have only one number and belong to nobody: `the sun`, never `my six suns`. */
export const onlyThe: ReadonlySet<string> = new Set(nouns.onlyThe.split(' '));
