/** The questions and answers of a swapper. Offsets are UTF-16 units into the sentence. */

/** `n` noun, `v` verb, `a` adjective, `r` adverb. */
export type PartOfSpeech = 'n' | 'v' | 'a' | 'r';

/** How a word is inflected: none, plural or third person, past, past participle, -ing, -er, -est. */
export type Form = 'base' | 's' | 'past' | 'participle' | 'ing' | 'er' | 'est';

/** One way to take a word form apart: went is go, verb, past. */
export interface WordForm {
  readonly lemma: string;
  readonly part: PartOfSpeech;
  readonly form: Form;
}

/** A change elsewhere in the sentence that the swap makes necessary: a becomes an. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface Swap {
  /** In the form and with the capital of the word it replaces; empty when the word is left out. */
  readonly text: string;
  /** The group can read every word of it; true for all when no group was given. */
  readonly reads: boolean;
  /** 0 to 1: how surely it says the same here. */
  readonly score: number;
  /** Present when the a or an before the word has to change too. */
  readonly article?: Edit;
  /** Present when it takes the place of more than the word: in order to, a blank beside a word left out. */
  readonly span?: { readonly start: number; readonly end: number };
}

/** The choices when nothing says the same: teach the word as a whole for this story, or leave it as it is. */
export type Alternative = 'teach' | 'leave';

export interface SwapResult {
  /** The word as it is in the sentence. */
  readonly word: string;
  /** At most ten, best first; those the group can read come first. */
  readonly swaps: readonly Swap[];
  /** How many of the first are recommended, 0 to 3. */
  readonly best: number;
  /** Other things to do; empty when a swap is recommended. */
  readonly alternatives: readonly Alternative[];
}

/** The standing of a word for a group, as the engine's judge tells it. */
export type Reach = 'reads' | 'fresh' | 'not';

export interface SwapOptions {
  /** Asked for every word of a swap; without it all words read. */
  readonly reach?: (word: string) => Reach;
  /** Whether swaps may take the place of more than the word, or leave it out. */
  readonly phrases?: boolean;
}
