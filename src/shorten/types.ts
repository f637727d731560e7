/** The questions and answers of a shortener. Offsets are UTF-16 units into the sentence. */

/** The kind of a word in its sentence, as far as the rules need it. `mark` is anything that is not a word. */
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

/** The form of a verb. A finite form shows its own tense: ran, runs, was. */
export type VerbForm = 'past' | 's' | 'base' | 'ing' | 'participle';

export interface Word {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly lower: string;
  readonly kind: Kind;
  /** Only for verbs and helpers. */
  readonly form: VerbForm | null;
  /** The certainty of the kind, from 0 to 1. */
  readonly sure: number;
  /** Whether the word is inside quotation marks or brackets. Only the rules for quotations and brackets use such words. */
  readonly isInside: boolean;
}

/**
 * One case of an ordered list. The first case that applies counts. Each case has an example that meets it and a
 * counter-example that does not, like the language rules of the engine. The tests read these examples too.
 */
export interface Case<Place> {
  readonly name: string;
  readonly example: string;
  readonly counterExample: string;
  readonly applies: (place: Place) => boolean;
}

/** A part of the sentence to remove, and the text put in its place: nothing or a few words. */
export interface Cut {
  readonly start: number;
  readonly end: number;
  readonly put: string;
}

/** A rule that removes a part of a sentence or splits the sentence in two. */
export interface Rule {
  readonly name: RuleName;
  /** A sentence before and after the rule. */
  readonly example: readonly [string, string];
  /** A sentence that looks similar but has to stay as it is. */
  readonly counterExample: string;
  /** Whether a teacher would nearly always accept the change. Such a change is ticked from the start. */
  readonly isSafe: boolean;
  /** Returns every place where the rule may be used, the longest first. */
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

/** One change of a sentence: the rule and the words it removed. No words are removed when the sentence was split. */
export interface Step {
  readonly rule: RuleName;
  readonly removed: string;
}

export interface Shortening {
  /** One or more sentences, separated by a space. */
  readonly text: string;
  readonly steps: readonly Step[];
  /** Whether all steps come from rules that a teacher would nearly always accept. */
  readonly isSafe: boolean;
}

export interface ShortenOptions {
  /** Returns how many words a text has, and how many of them the group cannot read according to the engine. */
  readonly measure: (text: string) => { readonly words: number; readonly beyond: number };
  /** The sentences that follow. Nothing is removed that they refer to. */
  readonly next?: string;
  /** The most words a sentence should have. Longer sentences are split. Without this value no sentence is split. */
  readonly longest?: number;
}
