import type { WordExplanation } from '../../contract/page-contract.ts';
import type { CardSources, CardWord } from './card-sources.ts';

/** A card that is shown. */
export interface OpenCard {
  readonly word: CardWord;
  /** The element that gets the keyboard focus when the card closes. */
  readonly back: Element | null;
  /** Whether an event happened on the card. */
  holds(event: Event): boolean;
  hasFocus(): boolean;
  /** Whether the pointer is on the card. */
  hasPointer(): boolean;
  /** Removes the card. The keyboard focus returns to the earlier element unless `keepFocus` is set. */
  close(how?: { keepFocus: boolean }): void;
}

export interface OpenCardOptions {
  readonly sources: CardSources;
  readonly mode: ShadowRootMode;
  /** Whether the keyboard focus moves into the card. */
  readonly focus: boolean;
  readonly back: Element | null;
  readonly onClosed: () => void;
  /** Called when the user has clicked in the card, which therefore stays. */
  readonly onKept: () => void;
  /** Called when the pointer enters or leaves the card. */
  readonly onPointer: (isOver: boolean) => void;
  /** Called when this kind of card cannot be shown on the page. The card has then closed. */
  readonly onFailed: () => void;
}

/** Shows a card beside a word. The card stays until the word is gone or out of view, or until the card is closed. */
export type OpenCardFunction = (
  doc: Document,
  word: CardWord,
  content: WordExplanation | Error,
  options: OpenCardOptions,
) => OpenCard;
