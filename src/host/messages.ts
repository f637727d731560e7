import type { Report, Standing, Verdict, WordAnalysis, WordKey } from '../analyze/types.ts';

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
}

/** Asked of the content script in one tab. */
export interface ToPage {
  /** The page's words; no answer while nothing is shaded. */
  words: () => PageWords;
  /** Scrolls to the n-th place of a word (wrapping) and marks it for a moment; false when it is gone. */
  goTo: (place: { readonly key: WordKey; readonly n: number }) => boolean;
  stop: () => void;
}

/** Told by a content script to whoever listens: its words changed, or shading stopped. */
export interface PageNews {
  readonly news: 'page';
  readonly shaded: boolean;
}

type Calls = { [name: string]: (given: never) => unknown };
export type Given<C, N extends keyof C> = C[N] extends (given: infer G) => unknown ? G : never;
export type Answer<C, N extends keyof C> = C[N] extends (given: never) => infer A ? A : never;

/** A question on its way; `to` keeps the two kinds of listeners apart. */
export interface Question {
  readonly to: 'background' | 'page';
  readonly ask: string;
  readonly given: unknown;
}

/** What answers each question of one side. */
export type Answers<C> = {
  readonly [N in keyof C]: (given: Given<C, N>) => Answer<C, N> | Promise<Answer<C, N>>;
};

/** Whether a message is a question for this side. */
export function isQuestion(message: unknown, to: Question['to']): message is Question {
  return (
    typeof message === 'object' &&
    message !== null &&
    'to' in message &&
    message.to === to &&
    'ask' in message
  );
}

/** Whether a message is news of a page. */
export function isPageNews(message: unknown): message is PageNews {
  return typeof message === 'object' && message !== null && 'news' in message && message.news === 'page';
}

/** Answers a question, or undefined when it is not one of these. */
export function answer<C extends Calls>(
  answers: Answers<C>,
  { ask, given }: Question,
): Promise<unknown> | undefined {
  const found = (answers as Record<string, (given: unknown) => unknown>)[ask];
  return found ? Promise.resolve(given).then(found) : undefined;
}
