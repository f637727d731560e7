import type { WordKey } from '../../analyze/types.ts';
import type {
  FrameWords,
  PagePart,
  PageReport,
  PageWords,
  ShadedPage,
  WordAction,
  WordExplanation,
  WordInSentence,
  WordSwap,
  WordsAsked,
  WordsJudged,
} from '../../contract/page-contract.ts';
import type { TakenPicture, Taking } from '../pictures/taken-picture.ts';
import type { Sender } from './hear-messages.ts';

/** The questions to the background, which answers for the group that is chosen now. */
export interface ToBackground {
  judge: (words: WordsAsked) => WordsJudged;
  /** Puts a part of the content script into the frame that asks. Once this is answered, the part is there. */
  bring: (part: PagePart) => void;
  /** Shades the frames of the page that asks. */
  shadeFrames: () => void;
  report: (page: Pick<PageWords, 'words' | 'skipped'>) => PageReport;
  explain: (key: WordKey) => WordExplanation;
  act: (action: WordAction) => void;
  /** Returns words that mean the same in a sentence and that the group can read, best first. Offsets are UTF-16 units. */
  swaps: (word: WordInSentence) => readonly WordSwap[];
  /** Starts reading the screen of a tab as a picture. */
  takeScreen: (tab: number) => Taking;
  /** Hands a picture that was taken to the page that reads it, once. Returns null when the picture is gone. */
  fetchPicture: (id: string) => TakenPicture | null;
}

/** The questions that the shading of a page answers itself. */
type PageAnswers = {
  [N in 'goTo' | 'sentence' | 'setScope' | 'rejudge' | 'takePassage' | 'step']: (
    ...given: Parameters<ShadedPage[N]>
  ) => Awaited<ReturnType<ShadedPage[N]>>;
};

/** The questions to the content script in one tab. */
export interface ToPage extends PageAnswers {
  /** Returns the page's words, once the page has been read. There is no answer while nothing is shaded. */
  words: () => FrameWords;
  /** Shades the practice page, into which browsers put no script. Any other page that is not shaded gives no answer. */
  start: () => true;
  /** Removes the shading. */
  stop: () => true;
}

/** The message that a content script sends to all listeners when its words changed or the shading stopped. */
export interface PageNews {
  readonly news: 'page';
  readonly shaded: boolean;
}

type Calls = { [name: string]: (given: never) => unknown };
export type Given<C, N extends keyof C> = C[N] extends (given: infer G) => unknown ? G : never;
export type Answer<C, N extends keyof C> = C[N] extends (given: never) => infer A ? A : never;

/** A question as it is sent. `to` distinguishes the two kinds of listeners. */
export interface Question {
  readonly to: 'background' | 'page';
  readonly ask: string;
  readonly given: unknown;
}

/** The functions that answer each question of one side. */
export type Answers<C> = {
  readonly [N in keyof C]: (given: Given<C, N>, sender: Sender) => Answer<C, N> | Promise<Answer<C, N>>;
};

/** Returns whether a message is a question for this side. */
export function isQuestion(message: unknown, to: Question['to']): message is Question {
  return (message as Partial<Question> | null | undefined)?.to === to;
}

/** Returns whether a message is news of a page. */
export function isPageNews(message: unknown): message is PageNews {
  return (message as Partial<PageNews> | null | undefined)?.news === 'page';
}

/** Answers a question. Returns undefined if the question is not among `answers`. */
export function answer<C extends Calls>(
  answers: Answers<C>,
  { ask, given }: Question,
  sender: Sender,
): Promise<unknown> | undefined {
  const all = answers as Record<string, (given: unknown, sender: Sender) => unknown>;
  const found = Object.hasOwn(all, ask) ? all[ask] : undefined;
  return found ? Promise.resolve(given).then((question) => found(question, sender)) : undefined;
}
