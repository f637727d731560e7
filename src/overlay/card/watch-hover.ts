import type { CardWord } from './card-sources.ts';

/** The time in milliseconds that the pointer rests on a word before the card opens. */
export const REST_MS = 500;
/**
 * The time in milliseconds that the pointer may be away from the word and the card. The pointer needs this time to move
 * between word and card.
 */
export const LEAVE_MS = 300;

interface HoverOptions {
  /** The earlier position of the pointer. */
  readonly first?: PointerEvent | undefined;
  readonly wordAt: (x: number, y: number) => CardWord | null;
  /** Whether the pointer is on an open card or its word. */
  readonly isHeld: (event: PointerEvent) => boolean;
  readonly onRest: (word: CardWord) => void;
  readonly onLeave: () => void;
  readonly signal: AbortSignal;
}

/**
 * Reports when the pointer rests on a word, and when it has left. A second rest on the same word is not reported. The
 * page does not see the pointer move onto a card and off it, so the caller reports these moves with `follow`.
 */
export function watchHover(
  view: Window,
  { first, wordAt, isHeld, onRest, onLeave, signal }: HoverOptions,
): { follow(isOnCard: boolean): void } {
  let boxes: readonly DOMRect[] = [];
  let resting: ReturnType<typeof setTimeout> | undefined;
  let leaving: ReturnType<typeof setTimeout> | undefined;
  /** Whether the pointer was on the card or the word when the page last saw it. */
  let isOnWord = false;

  function cancelRest(): void {
    clearTimeout(resting);
  }
  function stay(): void {
    clearTimeout(leaving);
    leaving = undefined;
  }
  function leave(): void {
    leaving ??= setTimeout(() => {
      leaving = undefined;
      onLeave();
    }, LEAVE_MS);
  }
  function forget(): void {
    cancelRest();
    boxes = [];
  }
  function move(event: PointerEvent): void {
    const { clientX: x, clientY: y } = event;
    if (!event.isTrusted || event.pointerType === 'touch') return;
    isOnWord = isHeld(event);
    if (isOnWord) {
      cancelRest();
      stay();
      return;
    }
    if (boxes.some((box) => isInside(box, x, y))) return;
    forget();
    leave();
    const word = event.buttons === 0 ? wordAt(x, y) : null;
    if (!word) return;
    boxes = word.rects();
    resting = setTimeout(onRest, REST_MS, word);
  }

  const options = { capture: true, passive: true, signal };
  view.addEventListener('pointermove', move, options);
  view.addEventListener('pointerdown', cancelRest, options);
  view.addEventListener('keydown', cancelRest, options);
  view.addEventListener('scroll', forget, options);
  view.addEventListener(
    'pointerout',
    (event) => {
      if (event.relatedTarget !== null || event.pointerType === 'touch') return;
      forget();
      leave();
    },
    options,
  );
  signal.addEventListener(
    'abort',
    () => {
      cancelRest();
      stay();
    },
    { once: true },
  );
  if (first) move(first);
  return {
    follow(isOnCard) {
      // If the pointer is back on its word, the page has already seen it there.
      if (!isOnCard && !isOnWord) leave();
      isOnWord = false;
    },
  };
}

/** Whether a point is in a box, its edges included. */
export function isInside({ left, top, right, bottom }: DOMRect, x: number, y: number): boolean {
  return left <= x && x <= right && top <= y && y <= bottom;
}
