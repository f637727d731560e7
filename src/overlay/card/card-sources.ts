import type { WordKey } from '../../analyze/types.ts';
import type { WordAction, WordExplanation, WordSwap } from '../../contract/page-contract.ts';

/** One place of a word in the page. */
export interface CardWord {
  readonly key: WordKey;
  /** Where the word is drawn now, in CSS pixels of the view; empty once it is gone. */
  rects(): DOMRect[];
  /** Direction of the text around it; the card is flush with the word's beginning. */
  readonly dir?: string;
}

/** Where cards get their words from, and what they tell of them. */
export interface CardSources {
  /** The word drawn at a point of the view, in CSS pixels. */
  wordAt(x: number, y: number): CardWord | null;
  /** The next (1) or previous (-1) word not yet decodable, brought into view; null when there is none. */
  next(from: CardWord | null, direction: 1 | -1): CardWord | null;
  explain(key: WordKey): Promise<WordExplanation>;
  /** Rejects with an Error whose message is one clear sentence. */
  act(action: WordAction): Promise<void>;
  /** Substitutes for a word; left out where there are none to ask for. */
  swaps?(word: CardWord): Promise<readonly WordSwap[]>;
  /** Aborting closes the card and takes every listener away. */
  readonly signal: AbortSignal;
}
