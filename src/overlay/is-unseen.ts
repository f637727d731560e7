import { own } from './own.ts';

/** Boxes set so far out of the page are put away; slides of a picture show wait nearer by. In CSS pixels. */
const FAR = -3000;
/** Titles and links that a picture of their words may stand in for. */
const MAY_BE_PICTURE = new Set(['A', 'BUTTON', 'H1', 'H2', 'H3']);

/**
 * Whether an element is laid out but nothing inside it can be seen: fully see-through, a box folded to nothing, or
 * text for screen readers alone (cut to a pixel, cut away, set far out of the page). Text that is just being faded in or
 * unfolded counts as seen, since it will be in a moment.
 */
export function isUnseen(element: Element, style: CSSStyleDeclaration): boolean {
  const hidden =
    (style.opacity === '0' && !isPage(element)) || (hasBox(style) && hidesItsText(element, style));
  return hidden && !isMoving(element);
}

/** A page that fades itself in shows its text in a moment, or hides all of it for want of a script. */
function isPage({ tagName }: Element): boolean {
  return tagName === 'BODY' || tagName === 'HTML';
}

/** Out of the flow of the text around it, which closes over its place. */
export function isTakenOut({ position }: CSSStyleDeclaration): boolean {
  return position === 'absolute' || position === 'fixed';
}

/** An element that only styles a line cannot hide it by its size or place. */
function hasBox({ display }: CSSStyleDeclaration): boolean {
  return display !== 'inline' && display !== 'contents';
}

function hidesItsText(element: Element, style: CSSStyleDeclaration): boolean {
  return isFolded(element, style) || hasTextSetOut(element, style) || (isTakenOut(style) && isPutAway(style));
}

/** The page's own box is the view's, whatever its size. */
function isFolded(element: Element, { overflowY }: CSSStyleDeclaration): boolean {
  if (overflowY === 'visible' || element.tagName === 'BODY') return false;
  return element.clientHeight <= 1 || element.clientWidth <= 1;
}

/** A title with a picture in place of its letters. */
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
