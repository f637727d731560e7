import type { Hindrance } from '../../contract/card-contract.ts';

/** What the content script sees of a card's place. */
export interface OutsideWatch {
  /** Looks where the card is now, and what lies over it. */
  look(now?: { readonly closely: boolean }): void;
  hindrance(): Hindrance | null;
  /** Since when the card has been where it is, uncovered, by `performance.now`. */
  restsSince(): number;
}

/** What is drawn above everything else, in the order in which it was opened (CSS Positioned Layout 4, top layer). */
const TOP_LAYER = ':popover-open, :modal, :fullscreen';
/** What lies over the card is looked for no oftener than this, in milliseconds, and as often until it is gone. */
const AGAIN = 100;

/**
 * Watches a card from the page it is in. Whether something lies over it the card itself knows in Chromium (`watchCover`); elsewhere it is
 * whatever the page opened in the top layer, since nothing else comes above the card.
 */
export function watchFromOutside(
  host: HTMLElement,
  frame: HTMLElement,
  onChange: () => void,
  signal: AbortSignal,
): OutsideWatch {
  const doc = host.ownerDocument;
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
    const at = placeOf(frame);
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

  /** Whether the frame is drawn as it was at first: a page of Firefox can get at it by its events. */
  function isAsDrawn(): boolean {
    const { pointerEvents, ...style } = lookOf(frame);
    // Until it has its place, nothing can be pressed.
    if (pointerEvents === 'none') return true;
    const now = [...Object.values(style), frame.getRootNode().childNodes.length].join();
    drawn ??= now;
    return now === drawn;
  }

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
    hindrance: () => (where === null ? 'frame' : isCovered ? 'covered' : null),
    restsSince: () => since,
  };
}

/** What could hide an element, or let another be seen in its place. */
function lookOf(element: Element) {
  const { pointerEvents, opacity, visibility, filter, transform, clipPath, maskImage, mixBlendMode } =
    element.ownerDocument.defaultView!.getComputedStyle(element);
  return { pointerEvents, opacity, visibility, filter, transform, clipPath, maskImage, mixBlendMode };
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
