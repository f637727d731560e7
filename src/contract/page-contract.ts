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
 * The messages between the shading of a page, its cards, the panel and the background. Each type is declared only in
 * this file. Everything except functions can be sent as a message.
 */

/** The text of a page that is checked: its main story, the whole page, or the selected part. */
export type ScopeKind = 'story' | 'page' | 'selection';

/** The way a word is shown on pages. A word is `soon` if it is `beyond` and lacks only patterns of the next steps. */
export type Shown = Standing | 'soon';

/** How words are marked on pages: with a wash and an underline, or with the underline alone. */
export type Look = 'wash' | 'underline';

/**
 * A frame that cannot be read: from another site, a PDF (drawn by the browser itself), or isolated by the page
 * (`sandbox`).
 */
export interface UnreadFrame {
  /** Empty if the frame has no address that can be opened. */
  readonly url: string;
  readonly title: string;
  readonly why: 'site' | 'pdf' | 'sealed';
  /** Whether the frame takes most of the view. The text that was read may then be only a menu. */
  readonly fills: boolean;
}

/** The text of a page that is counted but not visible, or that is missing. */
export interface HiddenText {
  /** The number of counted words that a box without scrolling cuts off, or that something covers. */
  readonly covered: number;
  /** Whether the page contains only the rows of a list that are near the view. */
  readonly rows: boolean;
  /** Whether the page declares that reading it costs money. The page may then contain only the beginning of the text. */
  readonly paid: boolean;
}

/** The thing that fills the view and may have drawn text that cannot be read. */
export type DrawnText = 'canvas' | 'picture';

/** The facts that one frame of a page reports about itself. */
export interface FrameWords extends HiddenText {
  readonly title: string;
  /** The author, if the page names one. */
  readonly byline: string | null;
  /** The publication date, as the page gives it. */
  readonly date: string | null;
  readonly url: string;
  /** The distinct words with their counts. */
  readonly words: readonly (readonly [key: WordKey, count: number])[];
  /** The number of tokens left out of the count: numbers, addresses, other scripts. */
  readonly skipped: number;
  readonly scope: ScopeKind;
  /** Whether there is a selection that could be checked instead. */
  readonly selection: boolean;
  /** Frames that cannot be read from this frame. */
  readonly foreign: readonly UnreadFrame[];
  readonly drawn: DrawnText | null;
  /** The number of words in fields and editable parts, which are not read. */
  readonly written: number;
  /** Whether a part rewrites itself forever and is no longer followed. */
  readonly restless: boolean;
  /** The declared language of the text (`en-GB`). Empty if the page declares none. */
  readonly language: string;
  /** Whether the page keeps removing the marks, so that they are no longer restored. */
  readonly takenAway: boolean;
  /** The error, with its stack, that prevented words of the frame from being marked. Usually null. */
  readonly fault: string | null;
  /** Facts of a PDF; left out for other pages. */
  readonly pdf?: PdfFacts;
}

/** The facts about a PDF, from the part of its text that was read. */
export interface PdfFacts {
  readonly pages: number;
  /** The number of pages without text, such as scans. */
  readonly pictures: number;
  /** Whether the PDF has fields to fill in. Their content is not read. */
  readonly isForm: boolean;
  /** Whether the PDF is open in the extension's own page, where its words are marked. */
  readonly isOpen: boolean;
}

/** A page with all its frames. */
export interface PageWords extends FrameWords {
  /** The number of frames that may be read but have not answered. */
  readonly silentFrames: number;
}

/** A homograph with enough of its text to determine its reading. Offsets are UTF-16 units into the text. */
export interface Homograph {
  readonly key: WordKey;
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** The words of a page whose standing is requested, and the homographs whose reading is requested too. */
export interface WordsAsked {
  readonly keys: readonly WordKey[];
  readonly homographs: readonly Homograph[];
}

/**
 * The standing of each key, and for each homograph its key with the reading in that text. Both lists keep the order of
 * the request.
 */
export interface WordsJudged {
  readonly standings: readonly Shown[];
  readonly readings: readonly { readonly key: WordKey; readonly standing: Shown }[];
}

export type JudgeWords = (asked: WordsAsked) => Promise<WordsJudged>;

/** The report of a page for the group. */
export interface PageReport extends Report {
  /** The number of running words that are `beyond` but lack only patterns of the next steps. */
  readonly soon: number;
}

/** All data that is shown about one word. */
export interface WordExplanation {
  readonly analysis: WordAnalysis;
  readonly verdict: Verdict;
  /** The style in which the word's sounds are written and pronounced. Left out for American in dictionary notation. */
  readonly sounds?: SoundStyle;
  /** The step that teaches each missing pattern, from 1. Null if the group's sequence never teaches it. */
  readonly steps: Readonly<Record<PatternId, number | null>>;
  /** How the word counts for the group. */
  readonly counts: CountsAs;
  /** The missing patterns that were taught but are not secure. */
  readonly notYet: readonly PatternId[];
}

/**
 * The teacher's decision about a word in the page: how the word counts for the chosen group from now on, or that a
 * pattern is taught. `unteach` takes back that a pattern is taught; `notYet` is true if the pattern was not secure
 * before.
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

/** A word that may replace another. */
export interface WordSwap {
  readonly text: string;
  /** Whether the group can read the word. */
  readonly reads: boolean;
}

/** One line of a page's text: a heading (`level` 1 to 6), an entry of a list, or a paragraph. */
export interface PageLine {
  readonly kind: 'heading' | 'item' | 'paragraph';
  readonly level: number;
  readonly text: string;
}

/** The checked text of a page, line by line, and the number of pictures that were left out. */
export interface PagePassage {
  readonly lines: readonly PageLine[];
  readonly pictures: number;
}

/** The n-th place of a word in a page, from 0. */
export interface NthPlace {
  readonly key: WordKey;
  readonly n: number;
}

/**
 * The parts of the content script that are loaded into a page only when the page needs them: the finder of the article,
 * the cards, cards without a frame, the layer of marks that the page cannot see, and the search for text that is not
 * read.
 */
export type PagePart = 'article' | 'card' | 'plain-card' | 'veil' | 'unread';

/** The shading of one page with its word cards. */
export interface ShadedPage {
  /** Resolves when the page has been read once. Rejects if its words could not be judged at that time. */
  readonly read: Promise<void>;
  /** Resolves when the words in view are marked too. Rejects as `read` does. */
  readonly ready: Promise<void>;
  words(): Promise<FrameWords>;
  /** Requests all standings again, because the group or its taught patterns have changed. */
  rejudge(): Promise<void>;
  /** Scrolls to a place and marks it for a moment, if it exists. Returns the number of places of the word. */
  goTo(place: NthPlace): number;
  /** Returns the sentence of a place, or null if there is no such place. */
  sentence(place: NthPlace): WordInSentence | null;
  /**
   * Checks another scope of the page. Returns the scope that is checked from then on, which differs from `kind` if the
   * page has no such text.
   */
  setScope(kind: ScopeKind): Promise<ScopeKind>;
  takePassage(): Promise<PagePassage>;
  setLook(look: Look): void;
  /** Draws the marks from now on where no script of the page can see them. */
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
  /** Loads a part of the content script. The part is put into the page on the first call. */
  readonly bring: <N extends PagePart>(part: N) => Promise<Parts[N]>;
  /** Called when the words of the page have changed since they were last requested. */
  readonly onChange: () => void;
  /** Aborting leaves the page as it was. */
  readonly signal: AbortSignal;
}
