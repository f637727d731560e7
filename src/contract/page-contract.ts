import type { SoundStyle } from '../analyze/index.ts';
import type {
  CountsAs,
  PatternId,
  Report,
  Standing,
  Verdict,
  WordAnalysis,
  WordKey,
} from '../analyze/types.ts';

/**
 * The messages between the shading of a page, its cards, the panel and the background. Each thing is declared here alone; all of it can travel
 * as a message, the functions excepted.
 */

/** Which text of a page is checked: its main story, all of it, or the selected part. */
export type ScopeKind = 'story' | 'page' | 'selection';

/** How a word is shown on pages: `soon` is one that is `beyond` and lacks only patterns of the next steps. */
export type Shown = Standing | 'soon';

/** How words are marked on pages: with a wash and an underline, or with the underline alone. */
export type Look = 'wash' | 'underline';

/** A frame that cannot be read: of another site, a PDF (the browser draws it by itself), or sealed off by the page (`sandbox`). */
export interface UnreadFrame {
  /** Empty where it has no address to be opened at. */
  readonly url: string;
  readonly title: string;
  readonly why: 'site' | 'pdf' | 'sealed';
  /** Whether it takes most of the view, so that the text that is read may be a menu. */
  readonly fills: boolean;
}

/** Which of a page's text is not seen as it is counted. */
export interface HiddenText {
  /** Words that are counted, but are cut off by a box that does not scroll, or are under something. */
  readonly covered: number;
  /** Whether some list has only the rows near the view on the page. */
  readonly rows: boolean;
  /** Whether the page says that reading it costs money, so that only its beginning may be here. */
  readonly paid: boolean;
}

/** The thing that fills the view and may have drawn text that cannot be read. */
export type DrawnText = 'canvas' | 'picture';

/** The facts that one frame of a page gives of itself. */
export interface FrameWords extends HiddenText {
  readonly title: string;
  /** Who wrote it, where the page says so. */
  readonly byline: string | null;
  /** When it came out, as the page says it. */
  readonly date: string | null;
  readonly url: string;
  /** The distinct words, with how often each is there. */
  readonly words: readonly (readonly [key: WordKey, count: number])[];
  /** Tokens left out of the count: numbers, addresses, other scripts. */
  readonly skipped: number;
  readonly scope: ScopeKind;
  /** Whether something is selected that could be checked instead. */
  readonly selection: boolean;
  /** Frames that cannot be read from here. */
  readonly foreign: readonly UnreadFrame[];
  readonly drawn: DrawnText | null;
  /** Words in fields and editable parts, which are not read. */
  readonly written: number;
  /** Whether a part rewrites itself without end and is not followed. */
  readonly restless: boolean;
  /** The language its text is said to be in (`en-GB`); empty where the page does not say. */
  readonly language: string;
  /** Whether the page keeps taking the marks away, so that they are no longer put back. */
  readonly takenAway: boolean;
  /** Why words of it could not be marked, as an error with its stack; null as a rule. */
  readonly fault: string | null;
  /** Facts of a PDF; left out for other pages. */
  readonly pdf?: PdfFacts;
}

/** A PDF, as far as its text was read. */
export interface PdfFacts {
  readonly pages: number;
  /** How many of its pages have no text, such as scans. */
  readonly pictures: number;
  /** Whether it has fields to fill in, of which nothing is read. */
  readonly isForm: boolean;
  /** Whether it is open in the extension's own page, where its words are marked. */
  readonly isOpen: boolean;
}

/** A page with all its frames. */
export interface PageWords extends FrameWords {
  /** Frames that may be read and have not answered. */
  readonly silentFrames: number;
}

/** A homograph in as much of its text as tells its reading; offsets are UTF-16 units into the text. */
export interface Homograph {
  readonly key: WordKey;
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** Words of a page whose standing is wanted, and homographs whose reading is wanted too. */
export interface WordsAsked {
  readonly keys: readonly WordKey[];
  readonly homographs: readonly Homograph[];
}

/** How to show each key, and for each homograph its key with the reading it has there; both in order. */
export interface WordsJudged {
  readonly standings: readonly Shown[];
  readonly readings: readonly { readonly key: WordKey; readonly standing: Shown }[];
}

export type JudgeWords = (asked: WordsAsked) => Promise<WordsJudged>;

/** The report of a page for the group. */
export interface PageReport extends Report {
  /** How many of its running words that are `beyond` lack only patterns of the next steps. */
  readonly soon: number;
}

/** Everything that is shown of one word. */
export interface WordExplanation {
  readonly analysis: WordAnalysis;
  readonly verdict: Verdict;
  /** How its sounds are written down and said; left out for American in the marks of dictionaries. */
  readonly sounds?: SoundStyle;
  /** The step that teaches each missing pattern, from 1; null when the group's sequence never does. */
  readonly steps: Readonly<Record<PatternId, number | null>>;
  /** How the word counts for the group. */
  readonly counts: CountsAs;
  /** Which of the missing patterns were taught but are not secure. */
  readonly notYet: readonly PatternId[];
}

/**
 * The teacher's decision about a word in the page: how it counts for the chosen group from now on, or that a pattern is taught. `unteach`
 * takes that back; `notYet` where the pattern was not secure before.
 */
export type WordAction =
  | { readonly do: CountsAs; readonly word: WordKey }
  | { readonly do: 'teach'; readonly pattern: PatternId }
  | { readonly do: 'unteach'; readonly pattern: PatternId; readonly notYet: boolean };

/** A word in its sentence; offsets are UTF-16 units into the sentence. */
export interface WordInSentence {
  readonly sentence: string;
  readonly start: number;
  readonly end: number;
}

/** A word that may be put in place of another. */
export interface WordSwap {
  readonly text: string;
  /** Whether the group can read it. */
  readonly reads: boolean;
}

/** One line of a page's text: a heading (`level` 1 to 6), an entry of a list, or a paragraph. */
export interface PageLine {
  readonly kind: 'heading' | 'item' | 'paragraph';
  readonly level: number;
  readonly text: string;
}

/** The text of a page that is checked, line by line, and how many pictures were left out. */
export interface PagePassage {
  readonly lines: readonly PageLine[];
  readonly pictures: number;
}

/** The n-th place of a word in a page, from 0. */
export interface NthPlace {
  readonly key: WordKey;
  readonly n: number;
}

/** The parts of the content script that come into a page only when they are needed there: the finder of the article, the cards, cards
 * without a frame, and the layer of marks that the page cannot see. */
export type PagePart = 'article' | 'card' | 'plain-card' | 'veil';

/** The shading of one page with its word cards. */
export interface ShadedPage {
  /** Settles when the page has been read once; rejects when its words could not be judged then. */
  readonly ready: Promise<void>;
  words(): FrameWords;
  /** Asks for all standings again: the group or what it was taught has changed. */
  rejudge(): Promise<void>;
  /** Scrolls to a place and marks it for a moment, if there is one; gives how many the word has. */
  goTo(place: NthPlace): number;
  /** The sentence of a place; null when there is none such. */
  sentence(place: NthPlace): WordInSentence | null;
  /** Checks another text of the page; gives the one that is checked then, which is another if there is none such. */
  setScope(kind: ScopeKind): Promise<ScopeKind>;
  takePassage(): Promise<PagePassage>;
  setLook(look: Look): void;
  /** Draws the marks where no script of the page sees them, from now on. */
  hideMarks(): void;
  /** Opens the card of the next (1) or previous (-1) word that is not yet decodable. */
  step(direction: 1 | -1): void;
}

/** The functions that the shading of a page needs from its host. `Parts` has the functions of each part by its name. */
export interface PageOptions<Parts extends Readonly<Record<PagePart, unknown>>> {
  readonly judge: JudgeWords;
  readonly explain: (key: WordKey) => Promise<WordExplanation>;
  /** Rejects with an Error whose message is one clear sentence. */
  readonly act: (action: WordAction) => Promise<void>;
  readonly swaps: (word: WordInSentence) => Promise<readonly WordSwap[]>;
  /** Gives a part of the content script, which is put into the page when it is first asked for. */
  readonly bring: <N extends PagePart>(part: N) => Promise<Parts[N]>;
  /** The words of the page have changed since they were last asked for. */
  readonly onChange: () => void;
  /** Aborting leaves the page as it was. */
  readonly signal: AbortSignal;
}
