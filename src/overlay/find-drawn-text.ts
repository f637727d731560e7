import type { DrawnText } from '../contract/page-contract.ts';
import { own } from './own.ts';

/** The share of the view that one canvas or picture must fill for the page to count as drawn. */
const MOST = 0.4;
/** The view is checked at these positions across and down. */
const POINTS = [0.1, 0.3, 0.5, 0.7, 0.9];

/**
 * Finds a canvas or picture that fills most of the view and may hold text that is drawn, not written. Returns null on
 * ordinary pages, and where the page's text is in front (a picture behind a story).
 */
export function findDrawnText(doc: Document): DrawnText | null {
  const view = doc.defaultView;
  if (!view) return null;
  const area = ({ left, right, top, bottom }: DOMRect): number =>
    Math.max(0, Math.min(right, view.innerWidth) - Math.max(left, 0)) *
    Math.max(0, Math.min(bottom, view.innerHeight) - Math.max(top, 0));
  const fills = (selector: string): boolean => {
    const drawn = [...doc.querySelectorAll(selector)].filter((element) => element.checkVisibility());
    const boxes = drawn.map((element) => element.getBoundingClientRect());
    const covered = boxes.reduce((sum, box) => sum + area(box), 0);
    return covered > view.innerWidth * view.innerHeight * MOST && isInFront(doc, boxes);
  };
  return fills('canvas') ? 'canvas' : fills('img') ? 'picture' : null;
}

/**
 * Returns whether most of the checked points inside the boxes have no text in front. Editors lay empty boxes over their
 * canvas.
 */
function isInFront(doc: Document, boxes: readonly DOMRect[]): boolean {
  const view = doc.defaultView!;
  let inside = 0;
  let withText = 0;
  for (const across of POINTS)
    for (const down of POINTS) {
      const x = view.innerWidth * across;
      const y = view.innerHeight * down;
      if (!boxes.some(({ left, right, top, bottom }) => left < x && x < right && top < y && y < bottom))
        continue;
      inside++;
      const met = doc.elementFromPoint(x, y);
      if (met && /\p{L}/u.test(own(met).textContent ?? '')) withText++;
    }
  return withText * 2 <= inside;
}
