import type { Group, Report, Standing, Verdict, WordAnalysis, WordKey } from '../analyze/types.ts';

/** The distinct words of a page with how often each stands there; running text itself never leaves the tab. */
export interface PageWords {
  readonly title: string;
  readonly url: string;
  readonly words: readonly (readonly [key: WordKey, count: number])[];
  /** Tokens left out of the count: numbers, addresses, other scripts. */
  readonly skipped: number;
}

/** Everything the panel shows of one word. */
export interface WordExplanation {
  readonly analysis: WordAnalysis;
  readonly verdict: Verdict;
}

/** Asked of the background, which answers for the group that is chosen now. */
export interface ToBackground {
  /** One standing for each key, in the same order. */
  judge: (keys: readonly WordKey[]) => Standing[];
  report: (page: Pick<PageWords, 'words' | 'skipped'>) => Report;
  explain: (key: WordKey) => WordExplanation;
  /** Sequences that ship with the extension, for the group picker. */
  group: () => Group;
}

/** Asked of the content script in one tab. */
export interface ToPage {
  /** The page's words, or null while nothing is shaded. */
  words: () => PageWords | null;
  /** Scrolls to the n-th place of a word (wrapping) and marks it for a moment; false when it is gone. */
  goTo: (place: { key: WordKey; n: number }) => boolean;
  stop: () => void;
}

/** Told to whoever listens (the panel): the words of a tab changed, or shading stopped. */
export interface FromPage {
  pageChanged: { shaded: boolean };
}
