/** The questions and answers of a swapper. Offsets are UTF-16 units into the sentence. */

/** `n` noun, `v` verb, `a` adjective, `r` adverb. */
export type PartOfSpeech = 'n' | 'v' | 'a' | 'r';

/** The inflection of a word: none, plural or third person, past, past participle, -ing, -er, -est. */
export type Form = 'base' | 's' | 'past' | 'participle' | 'ing' | 'er' | 'est';

/** One analysis of a word form: went is the past of the verb go. */
export interface WordForm {
  readonly lemma: string;
  readonly part: PartOfSpeech;
  readonly form: Form;
}

/** A change elsewhere in the sentence that a swap requires: a becomes an. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface Swap {
  /** The text in the form and with the capital of the word that it replaces. Empty when the word is removed. */
  readonly text: string;
  /** Whether the group can read every word of the swap. Always true when no group was given. */
  readonly reads: boolean;
  /** The certainty that the swap has the same meaning in this sentence, from 0 to 1. */
  readonly score: number;
  /** Present when the a or an before the word has to change too. */
  readonly article?: Edit;
  /** Present when the swap replaces more than the word: in order to, or a blank beside a removed word. */
  readonly span?: { readonly start: number; readonly end: number };
}

/** The choices when no swap has the same meaning: teach the word as a whole for this story, or leave it as it is. */
export type Alternative = 'teach' | 'leave';

export interface SwapResult {
  /** The word as it is in the sentence. */
  readonly word: string;
  /** At most ten swaps, best first. Swaps that the group can read come first. */
  readonly swaps: readonly Swap[];
  /** The number of recommended swaps at the start of the list, 0 to 3. */
  readonly best: number;
  /** The choices besides a swap. Empty when a swap is recommended. */
  readonly alternatives: readonly Alternative[];
}

/** The standing of a word for a group, as returned by the engine's judge. */
export type Reach = 'reads' | 'fresh' | 'not';

export interface SwapOptions {
  /** Called for every word of a swap. Without this function, all words count as readable. */
  readonly reach?: (word: string) => Reach;
  /** Whether swaps may replace more than the word, or remove it. */
  readonly phrases?: boolean;
}
