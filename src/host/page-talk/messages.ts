import type { PatternId, Report, Standing, Verdict, WordAnalysis, WordKey } from '../../analyze/types.ts';
import type { Sender } from './hear-messages.ts';

/** Which text of a page is checked: its main story, all of it, or what is selected. */
export type Scope = 'story' | 'page' | 'selection';

/** The distinct words of a page with how often each stands there. */
export interface PageWords {
  readonly title: string;
  /** Who wrote it, where the page says so. */
  readonly byline: string | null;
  /** When it came out, as the page says it. */
  readonly date: string | null;
  readonly url: string;
  readonly words: readonly (readonly [key: WordKey, count: number])[];
  /** Tokens left out of the count: numbers, addresses, other scripts. */
  readonly skipped: number;
  readonly scope: Scope;
  /** Whether something is selected that could be checked instead. */
  readonly selection: boolean;
  /** Frames that cannot be read from here; the address is empty where they have none. */
  readonly foreign: readonly UnreadFrame[];
  /** What fills the view where text may be drawn that cannot be read. */
  readonly drawn: 'canvas' | 'picture' | null;
  /** Words in fields and editable parts, which are not read. */
  readonly written: number;
  /** Words that are counted but cut off or covered on the page. */
  readonly covered: number;
  /** Whether some list has only the rows near the view on the page. */
  readonly rows: boolean;
  /** Whether the page says that reading it costs money. */
  readonly paid: boolean;
  /** Whether a part rewrites itself without end and is not followed. */
  readonly restless: boolean;
  /** The language its text is said to be in (`en-GB`); empty where the page does not say. */
  readonly language: string;
  /** Whether the page keeps taking the marks away, so that they are no longer put back. */
  readonly takenAway: boolean;
  /** Why words of it could not be marked, as an error with its stack; null as a rule. */
  readonly fault: string | null;
  /** Frames that may be read and have not answered. */
  readonly silentFrames: number;
}

/** What one frame of a page says of itself. */
export type FrameWords = Omit<PageWords, 'silentFrames'>;

/** A frame that cannot be read: of another site, a PDF, or sealed off by the page; `fills` when it takes most of the view. */
export interface UnreadFrame {
  readonly url: string;
  readonly title: string;
  readonly why: 'site' | 'pdf' | 'sealed';
  readonly fills: boolean;
}

/** Words of a page whose standing is wanted. */
export interface WordsAsked {
  readonly keys: readonly WordKey[];
  /** Homographs whose reading is wanted too, in as much of their text as tells it; offsets are UTF-16 units into it. */
  readonly homographs: readonly {
    readonly key: WordKey;
    readonly text: string;
    readonly start: number;
    readonly end: number;
  }[];
}

/** A standing for each key, and for each homograph its key with the reading it has there; both in order. */
export interface WordsJudged {
  readonly standings: readonly Standing[];
  readonly readings: readonly { readonly key: WordKey; readonly standing: Standing }[];
}

/** What is put into a page only when it is first needed there: what finds the article, what draws cards. */
export type PagePart = 'article' | 'card';

/** Everything that is shown of one word. */
export interface WordExplanation {
  readonly analysis: WordAnalysis;
  readonly verdict: Verdict;
  /** The step that teaches each missing pattern, from 1; null when the group's sequence never does. */
  readonly steps: Readonly<Record<PatternId, number | null>>;
}

/** What the teacher says of a word in the page: how it counts for the chosen group from now on. */
export type WordAction =
  | { readonly do: 'by-sight' | 'name' | 'skip'; readonly word: WordKey }
  | { readonly do: 'teach'; readonly pattern: PatternId };

/** A word in its sentence; offsets are UTF-16 units into the sentence. */
export interface WordInSentence {
  readonly sentence: string;
  readonly start: number;
  readonly end: number;
}

/** The text of a page with its headings, paragraphs and lists. */
export interface PagePassage {
  readonly lines: readonly {
    readonly kind: 'heading' | 'item' | 'paragraph';
    /** 1 to 6 for headings. */
    readonly level: number;
    readonly text: string;
  }[];
  /** How many pictures were left out. */
  readonly pictures: number;
}

/** Asked of the background, which answers for the group that is chosen now. */
export interface ToBackground {
  judge: (words: WordsAsked) => WordsJudged;
  /** Puts a part of the content script into the frame that asks; it is there once this is answered. */
  bring: (part: PagePart) => void;
  /** Shades frames of the page that asks and have loaded since. */
  shadeFrames: () => void;
  report: (page: Pick<PageWords, 'words' | 'skipped'>) => Report;
  explain: (key: WordKey) => WordExplanation;
  act: (action: WordAction) => void;
  /** Words that say the same in a sentence and the group can read, best first; offsets are UTF-16 units. */
  swaps: (word: WordInSentence) => { readonly text: string; readonly reads: boolean }[];
}

/** Asked of the content script in one tab. */
export interface ToPage {
  /** The page's words, once it has been read; no answer while nothing is shaded. */
  words: () => FrameWords;
  /** Scrolls to the n-th place of a word and marks it for a moment, if there are so many; gives their number. */
  goTo: (place: { readonly key: WordKey; readonly n: number }) => number;
  /** The sentence of the n-th place of a word; null when there are not so many. */
  sentence: (place: { readonly key: WordKey; readonly n: number }) => WordInSentence | null;
  /** Checks another text of the page; gives the one that is checked now, which is another if there is none such. */
  setScope: (scope: Scope) => Scope;
  /** Asks the background again for all standings: it failed before. */
  rejudge: () => void;
  /** The text that is checked, line by line, to be taken to the desk. */
  takePassage: () => PagePassage;
  /** Opens the card of the next (1) or previous (-1) word that is not yet decodable. */
  step: (direction: 1 | -1) => void;
  /** Shades the practice page, into which browsers put no script; no answer from any other page that is not shaded. */
  start: () => true;
  /** Takes the shading away. */
  stop: () => true;
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
  readonly [N in keyof C]: (given: Given<C, N>, sender: Sender) => Answer<C, N> | Promise<Answer<C, N>>;
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
  sender: Sender,
): Promise<unknown> | undefined {
  const all = answers as Record<string, (given: unknown, sender: Sender) => unknown>;
  const found = Object.hasOwn(all, ask) ? all[ask] : undefined;
  return found ? Promise.resolve(given).then((question) => found(question, sender)) : undefined;
}
