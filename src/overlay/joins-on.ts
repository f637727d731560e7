import { isTakenOut } from './is-unseen.ts';
import { own } from './own.ts';

/** Pieces of a word lie closer together than this, and words further apart, in parts of the height of the line. */
const BLANK = 0.12;
/** How far one piece may lie over the one before it, and above or below it, in the same parts. */
const OVERLAP = 0.25;

/** Whether an element has a place of its own in a line, not the one after what comes before it: set by a style, or by x and y in a drawing. */
export function isPlaced(element: Element, style: CSSStyleDeclaration): boolean {
  if (element.namespaceURI === 'http://www.w3.org/2000/svg')
    return element.tagName === 'text' || element.hasAttribute('x') || element.hasAttribute('y');
  return isTakenOut(style);
}

/**
 * Whether a placed element goes on with a word of the placed one before it: text over a scanned page is often cut into runs of
 * some letters. `Mar` and `igold` that touch are one word; `the` and `gulls` with a blank between, and two lines, are not.
 */
export function joinsOn(before: Element, after: Element): boolean {
  if (own(before).parentNode !== own(after).parentNode) return false;
  if (!/\p{L}$/u.test(own(before).textContent ?? '') || !/^\p{L}/u.test(own(after).textContent ?? ''))
    return false;
  const one = own(before).getBoundingClientRect();
  const other = own(after).getBoundingClientRect();
  const height = Math.max(one.height, other.height);
  const gap = other.left - one.right;
  return (
    other.width > 0 &&
    Math.abs(one.bottom - other.bottom) < height * OVERLAP &&
    gap < height * BLANK &&
    gap > -height * OVERLAP
  );
}

/** Whether an element is one of several pieces of a word, so that it cannot be read alone. */
export function isPiece(element: Element): boolean {
  const { previousElementSibling: before, nextElementSibling: after } = own(element);
  if (!before && !after) return false;
  if (!isPlaced(element, getComputedStyle(element))) return false;
  return (before !== null && joinsOn(before, element)) || (after !== null && joinsOn(element, after));
}
