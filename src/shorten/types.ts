/** The questions and answers of a shortener. Offsets are UTF-16 units into the sentence. */

/** The kind of a word in its sentence, as far as the rules ask. `mark`: anything that is no word. */
export type Kind =
  | 'determiner'
  | 'possessive'
  | 'subject'
  | 'object'
  | 'pronoun'
  | 'helper'
  | 'verb'
  | 'noun'
  | 'adjective'
  | 'adverb'
  | 'preposition'
  | 'joiner'
  | 'clause'
  | 'relative'
  | 'to'
  | 'not'
  | 'number'
  | 'name'
  | 'mark';

/** How a verb is written; `finite` is any form that says its own time: ran, runs, was. */
export type VerbForm = 'past' | 's' | 'base' | 'ing' | 'participle';

export interface Word {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly lower: string;
  readonly kind: Kind;
  /** For verbs and helpers. */
  readonly form: VerbForm | null;
  /** 0 to 1: how surely it is of its kind. */
  readonly sure: number;
  /** Inside quotation marks or brackets, where only the rules for those look. */
  readonly isInside: boolean;
}

/**
 * A case of an ordered list: the first that applies counts. It is written as the engine writes its rules of language, which tests
 * read too: the example meets the case, the counter-example does not.
 */
export interface Case<Place> {
  readonly name: string;
  readonly example: string;
  readonly counterExample: string;
  readonly applies: (place: Place) => boolean;
}

/** A part of the sentence to take out, and what takes its place: nothing, or a few words. */
export interface Cut {
  readonly start: number;
  readonly end: number;
  readonly put: string;
}

/** A rule that takes something out, or parts a sentence in two. */
export interface Rule {
  readonly name: RuleName;
  /** Before and after. */
  readonly example: readonly [string, string];
  /** Looks alike, and has to stay as it is. */
  readonly counterExample: string;
  /** A teacher would nearly always take it: it is ticked at once. */
  readonly isSafe: boolean;
  /** Every place where it may be used, the longest first. */
  readonly applies: (words: readonly Word[], sentence: string) => readonly Cut[];
}

export type RuleName =
  | 'long wording'
  | 'sentence adverb'
  | 'adverb'
  | 'row of adjectives'
  | 'adjective'
  | 'parenthesis'
  | 'apposition'
  | 'relative clause'
  | 'participle clause'
  | 'day of the week'
  | 'semicolon'
  | 'and, but, so'
  | 'and with the same subject'
  | 'which and who'
  | 'although'
  | 'after'
  | 'because'
  | 'dash';

/** A change of a sentence: the rule, and the words it took out; none where it was parted. */
export interface Step {
  readonly rule: RuleName;
  readonly removed: string;
}

export interface Shortening {
  /** One sentence or several, separated by a blank. */
  readonly text: string;
  readonly steps: readonly Step[];
  /** Only by rules that a teacher would nearly always take. */
  readonly isSafe: boolean;
}

export interface ShortenOptions {
  /** How many words of a text the group cannot read, and how many it has, as the engine judges. */
  readonly measure: (text: string) => { readonly words: number; readonly beyond: number };
  /** The sentences behind it, so that nothing is taken out that they speak of. */
  readonly next?: string;
  /** Most words a sentence should have; longer ones are parted. None are when it is not given. */
  readonly longest?: number;
}
