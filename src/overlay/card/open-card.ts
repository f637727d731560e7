import type { WordExplanation } from '../../contract/page-contract.ts';
import type { CardSources, CardWord } from './card-sources.ts';

/** A card that is shown. */
export interface OpenCard {
  readonly word: CardWord;
  /** Where the keyboard goes when the card closes. */
  readonly back: Element | null;
  /** Whether an event fell on the card. */
  holds(event: Event): boolean;
  hasFocus(): boolean;
  /** Whether the pointer is on the card. */
  hasPointer(): boolean;
  /** Takes the card away; the keyboard goes back where it was unless `keepFocus`. */
  close(how?: { keepFocus: boolean }): void;
}

export interface OpenCardOptions {
  readonly sources: CardSources;
  readonly mode: ShadowRootMode;
  /** Whether the keyboard goes into the card. */
  readonly focus: boolean;
  readonly back: Element | null;
  readonly onClosed: () => void;
  /** The card was clicked in, so it stays. */
  readonly onKept: () => void;
  /** The pointer has come onto the card, or left it. */
  readonly onPointer: (isOver: boolean) => void;
  /** The card cannot be shown in this way, and has closed. */
  readonly onFailed: () => void;
}

/** Shows a card beside a word and keeps it there until the word is gone, out of view, or the card is closed. */
export type OpenCardFunction = (
  doc: Document,
  word: CardWord,
  content: WordExplanation | Error,
  options: OpenCardOptions,
) => OpenCard;
