/** Tells whether something covers a card. */
export interface Cover {
  /** Returns whether the card is visible without anything over it; null where the browser does not say. */
  isSeen(): boolean | null;
  /** Returns the time, by `performance.now`, since when the card has been visible without anything over it. */
  seenSince(): number;
}

/** The entry of an observer that was asked to track visibility (Intersection Observer 2; Chromium). */
type VisibleEntry = IntersectionObserverEntry & { readonly isVisible?: boolean };

/** The shortest time between two visibility checks that browsers allow, in milliseconds. */
const DELAY = 100;

/**
 * Watches whether an element is drawn unchanged: nothing covers it, no part is cut off, and it is not transparent,
 * turned or made smaller. The check covers this page and every page around this frame.
 */
export function watchCover(element: Element, onChange: () => void): Cover {
  let isSeen: boolean | null = null;
  let since = Number.POSITIVE_INFINITY;
  if ('isVisible' in IntersectionObserverEntry.prototype) {
    const options: IntersectionObserverInit & { trackVisibility: boolean; delay: number } = {
      trackVisibility: true,
      delay: DELAY,
      threshold: [0, 0.5, 1],
    };
    new IntersectionObserver((entries) => {
      const { isVisible } = entries.at(-1) as VisibleEntry;
      if (isVisible === isSeen) return;
      isSeen = isVisible ?? null;
      since = performance.now();
      onChange();
    }, options).observe(element);
  }
  return { isSeen: () => isSeen, seenSince: () => since };
}
