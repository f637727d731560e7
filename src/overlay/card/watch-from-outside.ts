import type { Hindrance } from '../../contract/card-contract.ts';

/** The content script's checks of a card's place. */
export interface OutsideWatch {
  /** Checks the current place of the card and whether anything covers it. */
  look(now?: { readonly closely: boolean }): void;
  /** Starts or stops a check with each frame that the browser draws, while the pointer is over the card. */
  follow(isOver: boolean): void;
  hindrance(): Hindrance | null;
  /** The time since which the card has been in its place and uncovered, by `performance.now`. */
  restsSince(): number;
}

/**
 * Selects elements drawn above everything else, in the order in which they were opened (CSS Positioned Layout 4, top
 * layer).
 */
const TOP_LAYER = ':popover-open, :modal, :fullscreen';
/**
 * The least time, in milliseconds, between two checks for a cover of the card. While the card is covered, the check is
 * repeated at this interval.
 */
const AGAIN = 100;

/**
 * Watches a card from the page that contains it. In Chromium the card itself detects whether something covers it
 * (`watchCover`). Elsewhere, anything that the page opened in the top layer counts as a cover, since nothing else comes
 * above the card.
 */
export function watchFromOutside(
  host: HTMLElement,
  frame: HTMLElement,
  onChange: () => void,
  signal: AbortSignal,
): OutsideWatch {
  const doc = host.ownerDocument;
  const view: Window = doc.defaultView!;
  const cardSees = 'isVisible' in IntersectionObserverEntry.prototype;
  let where: string | null = '';
  let since = performance.now();
  let isCovered = false;
  let drawn: string | undefined;
  let looked = Number.NEGATIVE_INFINITY;
  let again: ReturnType<typeof setTimeout> | undefined;
  signal.addEventListener('abort', () => clearTimeout(again), { once: true });

  function look({ closely } = { closely: false }): void {
    if (signal.aborted) return;
    const now = performance.now();
    // If the page itself is in a frame, only the card can detect that something covers that frame.
    const at = cardSees || view === view.parent ? placeOf(frame) : null;
    if (at !== where) since = now;
    where = at;
    if (cardSees || (!closely && now - looked < AGAIN)) return;
    looked = now;
    const wasCovered = isCovered;
    isCovered = !isAsDrawn() || !host.matches(':popover-open') || hasOthersInTopLayer(doc, host);
    if (isCovered) {
      since = now;
      clearTimeout(again);
      again = setTimeout(() => look({ closely: true }), AGAIN);
    }
    if (isCovered !== wasCovered) onChange();
  }

  /**
   * Returns whether the frame is drawn as it was at first. A page in Firefox can reach the frame, and the root around
   * it, through their events. A style sheet or an animation that the page adds there changes no attribute.
   */
  function isAsDrawn(): boolean {
    // Nothing in the frame can be pressed until the frame has its place.
    if (drawn === undefined && view.getComputedStyle(frame).pointerEvents === 'none') return true;
    const now = [lookOf(frame), lookOf(host), frame.getRootNode().childNodes.length].join();
    drawn ??= now;
    // Firefox 153 does not draw a host whose filter or scale is animated, although the host's own important rules
    // override the animation.
    const isAnimated = frame.getAnimations().length + host.getAnimations().length > 0;
    return now === drawn && !isAnimated && hasPlainRoot(doc);
  }

  let picture = 0;
  /** Checks with every frame that the browser draws, because a page could otherwise hide the card between two checks. */
  function follow(isOver: boolean): void {
    cancelAnimationFrame(picture);
    if (cardSees || !isOver || signal.aborted) return;
    picture = requestAnimationFrame(() => {
      if (!isAsDrawn()) look({ closely: true });
      follow(true);
    });
  }
  signal.addEventListener('abort', () => cancelAnimationFrame(picture), { once: true });

  if (!cardSees) {
    const changes = new MutationObserver(() => look({ closely: true }));
    changes.observe(frame.getRootNode(), { subtree: true, childList: true, attributes: true });
    signal.addEventListener('abort', () => changes.disconnect(), { once: true });
  }

  // A dialog that is closed and opened again comes above the card inside it.
  const dialog = host.closest('dialog');
  if (dialog) {
    const observer = new MutationObserver(() => {
      if (!host.isConnected) return;
      host.hidePopover();
      host.showPopover();
      since = performance.now();
    });
    observer.observe(dialog, { attributeFilter: ['open'] });
    signal.addEventListener('abort', () => observer.disconnect(), { once: true });
  }
  return {
    look,
    follow,
    hindrance: () => (where === null ? 'frame' : isCovered ? 'covered' : null),
    restsSince: () => since,
  };
}

/** Styles that could hide an element, or show another element in its place. */
const HIDING = [
  'display opacity visibility content-visibility filter clip-path mask-image mix-blend-mode',
  'transform translate rotate scale zoom perspective offset-path z-index pointer-events',
].flatMap((names) => names.split(' '));

function lookOf(element: Element): string {
  const style = element.ownerDocument.defaultView!.getComputedStyle(element);
  return HIDING.map((name) => style.getPropertyValue(name)).join();
}

/** Filters that hide nothing: no filter, and inverted page colours, which dark themes use. */
const HARMLESS = /^(?:none|invert\((?:1|100%)\)(?: hue-rotate\(180deg\))?)$/;

/**
 * Returns whether the page's root has a harmless filter. In Firefox a filter of the root also applies to the top layer,
 * and may draw anything.
 */
function hasPlainRoot(doc: Document): boolean {
  return HARMLESS.test(doc.defaultView!.getComputedStyle(doc.documentElement).filter);
}

/** Returns the position of an element in the window, or null if a frame around the element belongs to another site. */
function placeOf(element: Element): string | null {
  const places: string[] = [];
  for (let at: Element | null = element; at; ) {
    const { left, top, width, height } = at.getBoundingClientRect();
    places.push([left, top, width, height].map(Math.round).join());
    const view: Window = at.ownerDocument.defaultView!;
    if (view === view.parent) return places.join(' ');
    at = view.frameElement;
  }
  return null;
}

function hasOthersInTopLayer(root: Document | ShadowRoot, host: Element): boolean {
  for (const element of root.querySelectorAll(TOP_LAYER))
    if (element !== host && !element.contains(host)) return true;
  for (const element of root.querySelectorAll('*')) {
    // `openOrClosedShadowRoot` exists in Firefox 63 and later.
    const shadow = (element as { openOrClosedShadowRoot?: ShadowRoot | null }).openOrClosedShadowRoot;
    if (shadow && element !== host && hasOthersInTopLayer(shadow, host)) return true;
  }
  return false;
}
