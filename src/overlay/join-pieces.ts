import { isTakenOut } from './is-unseen.ts';
import { own } from './own.ts';

/** Pieces of a word lie closer together than this, in parts of the height of the line; a blank is wider, */
const TOUCH = 0.12;
/** and not as wide as this, which parts columns and entries of a menu. */
const BLANK = 0.7;
/** How far one piece may lie over the one before it, and above or below it, in the same parts. */
const OVERLAP = 0.25;

/** Whether an element has a place of its own in a line, not the one after what comes before it: set by a style, or by x and y in a drawing. */
export function isPlaced(element: Element, style: CSSStyleDeclaration): boolean {
  if (element.namespaceURI === 'http://www.w3.org/2000/svg')
    return element.tagName === 'text' || element.hasAttribute('x') || element.hasAttribute('y');
  return isTakenOut(style);
}

/**
 * The gap between a placed element and the placed one before it: text over a scanned page is often cut into runs of some letters. `Mar` and
 * `igold` that touch are one word, `the` and `gulls` with a blank between are two of one line, rows and columns are lines.
 */
export function edgeBetween(before: Element, after: Element): 'none' | 'word' | 'line' {
  if (own(before).parentNode !== own(after).parentNode) return 'line';
  const one = own(before).getBoundingClientRect();
  const other = own(after).getBoundingClientRect();
  const height = Math.max(one.height, other.height);
  const gap = (other.left - one.right) / height;
  if (other.width === 0 || Math.abs(one.bottom - other.bottom) > height * OVERLAP) return 'line';
  if (!(gap > -OVERLAP && gap < BLANK) || !isPlaced(after, getComputedStyle(after))) return 'line';
  const touch =
    gap < TOUCH && /\S$/.test(own(before).textContent ?? '') && /^\S/.test(own(after).textContent ?? '');
  return touch ? 'none' : 'word';
}

/** Whether an element is one of several pieces of a line, so that it cannot be read alone. */
export function isPiece(element: Element): boolean {
  const { previousElementSibling: before, nextElementSibling: after } = own(element);
  if (!before && !after) return false;
  if (!isPlaced(element, getComputedStyle(element))) return false;
  return (
    (before !== null && edgeBetween(before, element) !== 'line') ||
    (after !== null && edgeBetween(element, after) !== 'line')
  );
}
