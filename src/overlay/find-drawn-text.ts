/** What text may be hidden in where no script can read it. */
export type DrawnText = 'pdf' | 'canvas' | 'picture';

/** A page is taken for drawn when this much of the view is one canvas or picture. */
const MOST = 0.4;

/** What fills most of the view and may hold text that is drawn, not written; null on ordinary pages. */
export function findDrawnText(doc: Document): DrawnText | null {
  if (doc.querySelector('embed[type="application/pdf"], object[type="application/pdf"]')) return 'pdf';
  const view = doc.defaultView;
  if (!view) return null;
  const area = ({ left, right, top, bottom }: DOMRect): number =>
    Math.max(0, Math.min(right, view.innerWidth) - Math.max(left, 0)) *
    Math.max(0, Math.min(bottom, view.innerHeight) - Math.max(top, 0));
  const fills = (selector: string): boolean => {
    const drawn = [...doc.querySelectorAll(selector)].filter((element) => element.checkVisibility());
    const covered = drawn.reduce((sum, element) => sum + area(element.getBoundingClientRect()), 0);
    return covered > view.innerWidth * view.innerHeight * MOST;
  };
  return fills('canvas') ? 'canvas' : fills('img') ? 'picture' : null;
}
