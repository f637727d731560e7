import { countStoryLetters } from './count-story-letters.ts';
import { own } from './own.ts';

/** The number of points down the middle of the view at which a paragraph is looked for. */
const POINTS = 10;

/**
 * Returns the paragraphs in view that are almost surely part of the page's story. The time does not depend on the length
 * of the page.
 */
export function findParagraphsInView(doc: Document): Element[] {
  const found = new Set<Element>();
  for (let point = 0; point < POINTS; point++) {
    const paragraph = paragraphAt(doc, innerWidth / 2, (innerHeight * (point + 0.5)) / POINTS);
    if (!paragraph || found.has(paragraph) || countStoryLetters(paragraph) === 0) continue;
    found.add(paragraph);
    for (const side of ['previousElementSibling', 'nextElementSibling'] as const)
      for (let at = own(paragraph)[side]; at && isInView(at); at = own(at)[side])
        if (at.tagName === 'P' && countStoryLetters(at) > 0) found.add(at);
  }
  return [...found];
}

/** Returns the paragraph at a point of the view. Between two lines, this is the paragraph of the nearest line. */
function paragraphAt(doc: Document, x: number, y: number): Element | null {
  const nearest = doc.caretPositionFromPoint?.(x, y)?.offsetNode;
  const element = nearest instanceof Text ? nearest.parentElement : doc.elementFromPoint(x, y);
  return element?.closest('p') ?? null;
}

function isInView(element: Element): boolean {
  const { top, bottom } = own(element).getBoundingClientRect();
  return bottom > 0 && top < innerHeight;
}
