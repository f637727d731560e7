/** How a card sees that something covers it. */
export interface Cover {
  /** Whether it is seen by itself, without anything over it; null where the browser does not say. */
  isSeen(): boolean | null;
  /** Since when it is, by `performance.now`. */
  seenSince(): number;
}

/** The entry of an observer that was asked to track visibility (Intersection Observer 2; Chromium). */
type VisibleEntry = IntersectionObserverEntry & { readonly isVisible?: boolean };

/** The shortest time between two looks that browsers allow, in milliseconds. */
const DELAY = 100;

/**
 * Watches whether an element is drawn as it is: nothing over it, none of it cut off, not transparent, not turned or made smaller, here
 * and in every page around this frame.
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
