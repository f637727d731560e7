import type { WordKey } from '../../analyze/types.ts';
import type { WordAction, WordExplanation, WordSwap } from '../../contract/page-contract.ts';

/** One occurrence of a word in the page. */
export interface CardWord {
  readonly key: WordKey;
  /**
   * Returns the rectangles in which the word is drawn now, in CSS pixels of the view. The list is empty once the word
   * is gone.
   */
  rects(): DOMRect[];
  /** The direction of the text around the word. The card is aligned with the beginning of the word. */
  readonly dir?: string;
}

/** The source of the words that cards show, and of the information about these words. */
export interface CardSources {
  /** Returns the word drawn at a point of the view, in CSS pixels. */
  wordAt(x: number, y: number): CardWord | null;
  /**
   * Brings the next (1) or previous (-1) word that is not yet decodable into view and returns it. Returns null when
   * there is none.
   */
  next(from: CardWord | null, direction: 1 | -1): CardWord | null;
  explain(key: WordKey): Promise<WordExplanation>;
  /** Carries out an action. Rejects with an Error whose message is one clear sentence. */
  act(action: WordAction): Promise<void>;
  /** Returns substitutes for a word. Absent where there is no source of substitutes. */
  swaps?(word: CardWord): Promise<readonly WordSwap[]>;
  /** Aborting closes the card and removes every listener. */
  readonly signal: AbortSignal;
}
