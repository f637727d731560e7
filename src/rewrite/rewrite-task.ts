import type { Span, Standing } from '../analyze/types.ts';

/** A word of a text with what it is to the group. */
export interface ReadWord extends Span {
  readonly standing: Standing;
}

/** The group and its language while sentences are rewritten. */
export interface RewriteTools {
  /** The words of a text as the group reads them; words to pre-teach count as by sight. */
  readonly read: (text: string) => readonly ReadWord[];
  /** The base a word is made from, in lower case; the word itself where it is made of no other. */
  readonly baseOf: (word: string) => string;
  /** Whether a word denies by a part of it: unhappy, helpless; not uncle. */
  readonly denies: (word: string) => boolean;
  /** Words that say the same in this place, nearest first, whether the group reads them. */
  readonly wordsFor: (
    sentence: string,
    start: number,
    end: number,
  ) => readonly { readonly text: string; readonly reads: boolean }[];
}

/** One sentence to be rewritten, and what goes with it. */
export interface RewriteTask {
  readonly sentence: string;
  /** The sentences beside it; empty at the ends of a text. */
  readonly before: string;
  readonly after: string;
  /** Names of the passage, in lower case (`findNames`). */
  readonly names: ReadonlySet<string>;
  /** Words that are taught beforehand: they may stay. */
  readonly preTeach: readonly string[];
  /** Words in a sentence at most. */
  readonly longest: number;
}

/** Asks the model; the answer is whatever it says. Rejects with the reason of the signal when it is aborted. */
export type AskModel = (
  text: string,
  schema: Record<string, unknown>,
  signal: AbortSignal,
) => Promise<string>;
