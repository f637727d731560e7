import nouns from './nouns.json' with { type: 'json' };

/** Nouns that take the same adjectives: any of them goes with any of these. */
export interface NounKind {
  readonly adjectives: string;
  readonly nouns: string;
}

/**
 * Which adjectives go with which nouns: `a wet dog`, not `a ripe dog`. Nouns in no kind stand alone.
 * Adjectives that fit only some nouns of a kind are in `ownAdjectives`.
 */
export const nounKinds: Readonly<Record<string, NounKind>> = nouns.kinds;

/** Adjectives that fit one noun and not all of its kind. */
export const ownAdjectives: Readonly<Record<string, string>> = nouns.ownAdjectives;

/** Plurals that no rule of spelling gives: `men`, while hats and boxes are ruled. */
export const irregularPlurals: Readonly<Record<string, string>> = nouns.irregularPlurals;

/** Things that are not counted, in one number only and nobody's: `the sun`, never `my six suns`. */
export const onlyThe: ReadonlySet<string> = new Set(nouns.onlyThe.split(' '));
