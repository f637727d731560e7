import { own } from './own.ts';

/** The position beyond which a box is removed from view, in CSS pixels. Slides of a slide show wait nearer to the page. */
const FAR = -3000;
/** Titles and links whose words may be replaced by a picture. */
const MAY_BE_PICTURE = new Set(['A', 'BUTTON', 'H1', 'H2', 'H3']);

/**
 * Returns whether an element is laid out but nothing inside it is visible. Such elements are fully transparent, folded
 * to nothing, or text only for screen readers (reduced to a pixel, clipped, or placed far outside the page). Text that
 * is just fading in or unfolding counts as visible, since it will be visible in a moment.
 */
export function isUnseen(element: Element, style: CSSStyleDeclaration): boolean {
  const hidden =
    (style.opacity === '0' && !isPage(element)) || (hasBox(style) && hidesItsText(element, style));
  return hidden && !isMoving(element);
}

/**
 * Returns whether the element is the page itself. A page that fades in shows its text in a moment, or hides all its
 * text because a script is missing.
 */
function isPage({ tagName }: Element): boolean {
  return tagName === 'BODY' || tagName === 'HTML';
}

/** Returns whether an element is outside the flow of the surrounding text, which leaves no room for it. */
export function isTakenOut({ position }: CSSStyleDeclaration): boolean {
  return position === 'absolute' || position === 'fixed';
}

/**
 * Returns whether an element has a box of its own. An element that only styles a line cannot hide the line by its size
 * or place.
 */
function hasBox({ display }: CSSStyleDeclaration): boolean {
  return display !== 'inline' && display !== 'contents';
}

function hidesItsText(element: Element, style: CSSStyleDeclaration): boolean {
  return isFolded(element, style) || hasTextSetOut(element, style) || (isTakenOut(style) && isPutAway(style));
}

/**
 * Returns whether a box is folded to nothing. The body is never folded, because its visible box is the view, whatever
 * its own size.
 */
function isFolded(element: Element, { overflowY }: CSSStyleDeclaration): boolean {
  if (overflowY === 'visible' || element.tagName === 'BODY') return false;
  return element.clientHeight <= 1 || element.clientWidth <= 1;
}

/** Returns whether a title has a picture in place of its letters. */
function hasTextSetOut({ tagName }: Element, style: CSSStyleDeclaration): boolean {
  return MAY_BE_PICTURE.has(tagName) && Number.parseFloat(style.textIndent) < FAR / 4;
}

function isPutAway({ clip, clipPath, left, top }: CSSStyleDeclaration): boolean {
  if (/^inset\((?:50|100)%|^circle\(0/.test(clipPath)) return true;
  if (Number.parseFloat(left) < FAR || Number.parseFloat(top) < FAR) return true;
  const [upper, right, lower, start] = (clip.match(/-?[\d.]+(?=px)/g) ?? []).map(Number);
  return start !== undefined && (lower! - upper! <= 1 || right! - start <= 1);
}

function isMoving(element: Element): boolean {
  const { parentElement } = element;
  return [element, parentElement && own(parentElement)].some(
    (one) => one !== null && one.getAnimations().length > 0,
  );
}
