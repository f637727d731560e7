import type { ReadWord } from './rewrite-task.ts';

/** A draft to be written from nothing. */
export interface DraftTask {
  readonly people: readonly { readonly name: string; readonly pronoun: 'he' | 'she' }[];
  /** The one place of the story: `dock`, and how one is there: `on`. */
  readonly place: { readonly name: string; readonly at: string };
  /** Words the story should have. */
  readonly topic: readonly string[];
  /** Words the group can read, commonest first. */
  readonly words: readonly string[];
  /** Words that practise the group's step. */
  readonly practise: readonly string[];
  readonly fewest: number;
  readonly most: number;
  /** The most words a sentence may have. */
  readonly longest: number;
}

/** The functions of the group that a draft is judged by. */
export interface DraftTools {
  /** Returns the words of a whole text with their standing for the group. */
  readonly read: (text: string) => readonly ReadWord[];
  /** Whether a word, in lower case, is fit for a text for children. */
  readonly isFit: (word: string) => boolean;
  /** Whether a word with a capital at the start of a sentence is the name of a person. */
  readonly isName: (word: string) => boolean;
  /** Whether a word, in lower case, practises the group's step. */
  readonly practises: (word: string) => boolean;
}
