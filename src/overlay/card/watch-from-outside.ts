import type { Hindrance } from '../../contract/card-contract.ts';

/** The view of a card's place from the content script. */
export interface OutsideWatch {
  /** Looks where the card is now, and what covers it. */
  look(now?: { readonly closely: boolean }): void;
  /** From now on, while the pointer is over the card, looks with each picture the browser draws. */
  follow(isOver: boolean): void;
  hindrance(): Hindrance | null;
  /** Since when the card has been where it is, uncovered, by `performance.now`. */
  restsSince(): number;
}

/** Elements drawn above everything else, in the order in which they were opened (CSS Positioned Layout 4, top layer). */
const TOP_LAYER = ':popover-open, :modal, :fullscreen';
/** A cover of the card is looked for no oftener than this, in milliseconds, and as often until it is gone. */
const AGAIN = 100;

/**
 * Watches a card from the page it is in. Whether something covers it the card itself knows in Chromium (`watchCover`); elsewhere it is
 * whatever the page opened in the top layer, since nothing else comes above the card.
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
    // A cover of a frame of the page is seen by the card or by nobody.
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
   * Whether the frame is drawn as it was at first: a page of Firefox can get at it, and at the root around it, by its events. A sheet or an
   * animation that it puts there changes no attribute.
   */
  function isAsDrawn(): boolean {
    // Until it has its place, nothing can be pressed.
    if (drawn === undefined && view.getComputedStyle(frame).pointerEvents === 'none') return true;
    const now = [lookOf(frame), lookOf(host), frame.getRootNode().childNodes.length].join();
    drawn ??= now;
    // Firefox 153 draws nothing of a host whose filter or scale is animated, though its own important rules win over that.
    const isAnimated = frame.getAnimations().length + host.getAnimations().length > 0;
    return now === drawn && !isAnimated && hasPlainRoot(doc);
  }

  let picture = 0;
  /** A page may hide the card only for the moments in which nobody looks. */
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

  // A dialog that is closed and opened again comes above the card that is in it.
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

/** Styles that could hide an element, or let another be seen in its place. */
const HIDING = [
  'display opacity visibility content-visibility filter clip-path mask-image mix-blend-mode',
  'transform translate rotate scale zoom perspective offset-path z-index pointer-events',
].flatMap((names) => names.split(' '));

function lookOf(element: Element): string {
  const style = element.ownerDocument.defaultView!.getComputedStyle(element);
  return HIDING.map((name) => style.getPropertyValue(name)).join();
}

/** Filters that hide nothing: none, and the colours of a page turned, as dark looks do it. */
const HARMLESS = /^(?:none|invert\((?:1|100%)\)(?: hue-rotate\(180deg\))?)$/;

/** In Firefox a filter of the page's root is laid over the top layer too, and may draw anything. */
function hasPlainRoot(doc: Document): boolean {
  return HARMLESS.test(doc.defaultView!.getComputedStyle(doc.documentElement).filter);
}

/** Where an element is in the window; null where a frame around it is another site's. */
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
    // Firefox 63 and later.
    const shadow = (element as { openOrClosedShadowRoot?: ShadowRoot | null }).openOrClosedShadowRoot;
    if (shadow && element !== host && hasOthersInTopLayer(shadow, host)) return true;
  }
  return false;
}
