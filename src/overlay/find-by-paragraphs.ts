import { countStoryLetters } from './count-story-letters.ts';
import { findMainElement } from './find-main-element.ts';
import { own } from './own.ts';

/** The story’s part is the smallest one with at least this share of the letters of all paragraphs. */
const MOST = 0.6;

/**
 * Returns the smallest part of a page that holds most of its paragraphs, or null if there are no paragraphs. Looks only
 * inside the main element if the page has one. Takes as long as one walk through the page.
 */
export function findByParagraphs(doc: Document): Element | null {
  const main =
    doc.querySelector('[itemprop~="articleBody"]') ?? doc.querySelector('main, [role="main"]') ?? doc.body;
  const letters = new Map<Element, number>();
  let all = 0;
  for (const paragraph of main.querySelectorAll('p')) {
    const length = countStoryLetters(paragraph);
    if (length === 0) continue;
    all += length;
    for (let at = own(paragraph).parentElement; at; at = own(at).parentElement)
      letters.set(at, (letters.get(at) ?? 0) + length);
  }
  if (all === 0) return findMainElement(doc);
  let root: Element = main;
  for (;;) {
    const within = [...own(root).children].find((child) => (letters.get(child) ?? 0) >= all * MOST);
    if (!within) break;
    root = within;
  }
  return root;
}
