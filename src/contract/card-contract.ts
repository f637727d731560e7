import type { WordKey } from '../analyze/types.ts';
import type { WordAction, WordExplanation, WordSwap } from './page-contract.ts';

/**
 * The messages between the content script and the card. The card is a page of the extension in a frame, so that no
 * script of the web page sees the card's text. The content script knows the word, and puts the frame beside the word.
 */

/**
 * The reason why a card does nothing: something of the page covers the card, or the card is in a frame whose place is
 * not known.
 */
export type Hindrance = 'covered' | 'frame';

/** Messages from the content script to the card. */
export type ToCard =
  | {
      readonly tell: 'show';
      readonly word: WordKey;
      /** Null if nothing is known. `fault` gives the reason. */
      readonly content: WordExplanation | null;
      readonly fault: string | null;
      /** The visible width of the page, in CSS pixels. */
      readonly room: number;
      /** Whether the keyboard focus moves into the card. */
      readonly focus: boolean;
    }
  | { readonly tell: 'swaps'; readonly swaps: readonly WordSwap[] }
  /** The visible width of the page has changed. */
  | { readonly tell: 'room'; readonly room: number }
  /** The card's size from now on: its width and its maximum height, in CSS pixels. */
  | { readonly tell: 'fit'; readonly width: number; readonly height: number }
  /** The reason why the card does nothing, as far as the content script sees it. */
  | { readonly tell: 'hindrance'; readonly hindrance: Hindrance | null }
  /** An action has succeeded or failed. */
  | { readonly tell: 'done'; readonly fault: string | null };

/** Messages from the card to the content script. */
export type FromCard =
  /** The size in CSS pixels that the card would have without a limit. */
  | { readonly tell: 'size'; readonly width: number; readonly height: number }
  /** The card's height at the size it was given. */
  | { readonly tell: 'height'; readonly height: number }
  | { readonly tell: 'act'; readonly action: WordAction }
  /** The pointer has entered or left the card. */
  | { readonly tell: 'over'; readonly over: boolean }
  /** The pointer moves in the card. */
  | { readonly tell: 'point' }
  /** The user clicked in the card, so the card stays. */
  | { readonly tell: 'keep' }
  | { readonly tell: 'close' };

/** One end of the channel between content script and card. Messages are kept until a listener is set. */
export interface CardLine<Told, Heard> {
  tell(message: Told): void;
  hear(on: (message: Heard) => void): void;
  cut(): void;
}
