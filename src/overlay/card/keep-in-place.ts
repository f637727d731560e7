import type { CardWord } from './card-sources.ts';
import { type Box, type CardPlace, placeCard, type Side } from './place-card.ts';

/** The distance that the card keeps from the edge of the view, in CSS pixels. */
const EDGE = 8;

export interface KeptPlace extends CardPlace {
  /** The maximum height. A card that is made narrower grows longer, but stays in the view. */
  readonly most: number;
}

interface PlaceOptions {
  /** Whether the card is still in the page. */
  readonly isThere: () => boolean;
  readonly onPlace: (place: KeptPlace) => void;
  /** Called when the size of the view has changed. */
  readonly onRoom: (width: number) => void;
  /** Called when the word is gone or out of view, or when the card was removed. */
  readonly onLost: () => void;
  readonly signal: AbortSignal;
}

/**
 * Calculates the place of a card of a given size beside its word. Repeats this each time the page moves or changes,
 * until the signal is aborted.
 */
export function keepInPlace(
  doc: Document,
  word: CardWord,
  { isThere, onPlace, onRoom, onLost, signal }: PlaceOptions,
): { resize(size: { width: number; height: number }): void; place(): void } {
  const view = doc.defaultView!;
  const rtl = (word.dir ?? view.getComputedStyle(doc.documentElement).direction) === 'rtl';
  let size = { width: 0, height: 0 };
  let side: Side | undefined;
  let wasInView = false;
  let frame = 0;

  function place(): void {
    if (signal.aborted) return;
    const boxes = isThere() ? word.rects() : [];
    const seen = seenOf(view);
    const inView = boxes.some((box) => meet(box, seen));
    if (boxes.length === 0 || (wasInView && !inView)) {
      onLost();
      return;
    }
    wasInView ||= inView;
    const at = placeCard({ word: boxes, card: size, view: seen, rtl, ...(side && { prefer: side }) });
    side = at.side;
    const room = seen.top + seen.height - at.top - EDGE;
    onPlace({ ...at, most: Math.min(at.height < size.height ? at.height : room, room) });
  }
  function soon(): void {
    if (!isThere()) onLost();
    cancelAnimationFrame(frame);
    frame = requestAnimationFrame(place);
  }
  const resized = (): void => onRoom(seenOf(view).width);

  view.addEventListener('scroll', soon, { capture: true, passive: true, signal });
  view.addEventListener('resize', resized, { signal });
  view.visualViewport?.addEventListener('scroll', soon, { signal });
  view.visualViewport?.addEventListener('resize', resized, { signal });
  const mutations = new MutationObserver(soon);
  mutations.observe(doc, { childList: true, characterData: true, subtree: true });
  signal.addEventListener(
    'abort',
    () => {
      mutations.disconnect();
      cancelAnimationFrame(frame);
    },
    { once: true },
  );
  return {
    place,
    resize(now) {
      size = now;
      place();
    },
  };
}

/** The part of the page in view. This part is smaller than the window when the page is pinch-zoomed. */
export function seenOf(view: Window): Box {
  const { visualViewport: seen } = view;
  if (!seen) return { left: 0, top: 0, width: view.innerWidth, height: view.innerHeight };
  return { left: seen.offsetLeft, top: seen.offsetTop, width: seen.width, height: seen.height };
}

function meet(a: Box, b: Box): boolean {
  return (
    a.left < b.left + b.width &&
    b.left < a.left + a.width &&
    a.top < b.top + b.height &&
    b.top < a.top + a.height
  );
}
