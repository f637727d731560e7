import type { Span, Standing } from '../analyze/types.ts';

/** A word of a text with its standing for the group. */
export interface ReadWord extends Span {
  readonly standing: Standing;
}

/** The functions of the group and its language that rewriting needs. */
export interface RewriteTools {
  /** Returns the words of a text with their standing for the group. Words to pre-teach count as by-sight words. */
  readonly read: (text: string) => readonly ReadWord[];
  /** Returns the base of a word, in lower case. A word that is not derived from another word is its own base. */
  readonly baseOf: (word: string) => string;
  /** Whether a part of the word negates the word, as in unhappy and helpless. Counter-example: uncle. */
  readonly denies: (word: string) => boolean;
  /**
   * Returns synonyms that fit in the sentence from `start` to `end`, nearest first, and whether the group reads each of
   * them.
   */
  readonly wordsFor: (
    sentence: string,
    start: number,
    end: number,
  ) => readonly { readonly text: string; readonly reads: boolean }[];
}

/** The most words of a sentence that the model writes, if the teacher sets no other limit. */
export const LONGEST_SENTENCE = 15;

/** One sentence to be rewritten, with its context. */
export interface RewriteTask {
  readonly sentence: string;
  /** The sentences before and after the sentence to rewrite. Empty at the start or end of a text. */
  readonly before: string;
  readonly after: string;
  /** Names of the passage, in lower case (`findNames`). */
  readonly names: ReadonlySet<string>;
  /** Words that are taught beforehand. A rewriting may keep them. */
  readonly preTeach: readonly string[];
  /** The most words a sentence may have. */
  readonly longest: number;
}

/** Asks the model and returns its raw answer. Rejects with the reason of the signal when the signal is aborted. */
export type AskModel = (
  text: string,
  schema: Record<string, unknown>,
  signal: AbortSignal,
) => Promise<string>;
