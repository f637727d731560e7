import { isTakenOut } from './is-unseen.ts';
import { own } from './own.ts';

/** The greatest gap between two pieces of one word, as a share of the line height. A blank is wider. */
const TOUCH = 0.12;
/** The least gap between columns or entries of a menu, as a share of the line height. A blank is narrower. */
const BLANK = 0.7;
/**
 * The greatest overlap of a piece with the one before it, and its greatest vertical offset, as shares of the line
 * height.
 */
const OVERLAP = 0.25;

/**
 * Returns whether an element has its own position in a line and does not simply follow the content before it. The
 * position is set by a style, or by x and y in a drawing.
 */
export function isPlaced(element: Element, style: CSSStyleDeclaration): boolean {
  if (element.namespaceURI === 'http://www.w3.org/2000/svg')
    return element.tagName === 'text' || element.hasAttribute('x') || element.hasAttribute('y');
  return isTakenOut(style);
}

/**
 * Returns how a placed element joins the placed element before it. Text over a scanned page is often cut into runs of
 * some letters:
 * - Pieces that touch are one word (`Mar` and `igold`).
 * - Pieces with a blank between them are two words of one line (`the` and `gulls`).
 * - Pieces in separate rows or columns are separate lines.
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

/** Returns whether an element is one of several pieces of a line and therefore cannot be read alone. */
export function isPiece(element: Element): boolean {
  const { previousElementSibling: before, nextElementSibling: after } = own(element);
  if (!before && !after) return false;
  if (!isPlaced(element, getComputedStyle(element))) return false;
  return (
    (before !== null && edgeBetween(before, element) !== 'line') ||
    (after !== null && edgeBetween(element, after) !== 'line')
  );
}
