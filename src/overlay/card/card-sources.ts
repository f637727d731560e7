import type { PatternId, Verdict, WordAnalysis, WordKey } from '../../analyze/types.ts';

/** One place of a word in the page. */
export interface CardWord {
  readonly key: WordKey;
  /** Where the word is drawn now, in CSS pixels of the view; empty once it is gone. */
  rects(): DOMRect[];
  /** Direction of the text around it; the card stands flush with the word's beginning. */
  readonly dir?: string;
}

/** Everything a card says of a word. */
export interface CardContent {
  readonly analysis: WordAnalysis;
  readonly verdict: Verdict;
  /** The step of the group's sequence that teaches a missing pattern, from 1; null when none does. */
  readonly steps: Readonly<Record<PatternId, number | null>>;
}

/** What the teacher says of a word: how it counts for the group from now on. */
export type CardAction =
  | { readonly do: 'by-sight' | 'name' | 'skip'; readonly word: WordKey }
  | { readonly do: 'teach'; readonly pattern: PatternId };

/** A word that may stand in place of another. */
export interface CardSwap {
  readonly text: string;
  /** Whether the group can read it. */
  readonly reads: boolean;
}

/** Where cards get their words from, and what they tell of them. */
export interface CardSources {
  /** The word drawn at a point of the view, in CSS pixels. */
  wordAt(x: number, y: number): CardWord | null;
  /** The next (1) or previous (-1) word not yet decodable, brought into view; null when there is none. */
  next(from: CardWord | null, direction: 1 | -1): CardWord | null;
  explain(key: WordKey): Promise<CardContent>;
  /** Rejects with an Error whose message is one clear sentence. */
  act(action: CardAction): Promise<void>;
  /** Substitutes for a word; left out where there are none to ask for. */
  swaps?(word: CardWord): Promise<readonly CardSwap[]>;
  /** Says a word; left out, a voice of this machine does. */
  speak?(text: string): void;
  /** Aborting closes the card and takes every listener away. */
  readonly signal: AbortSignal;
}
