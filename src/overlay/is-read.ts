import { isProse } from './is-prose.ts';
import { isUnseen } from './is-unseen.ts';
import { own } from './own.ts';

/** Elements that are never read to a child, or are not text of the page. */
const LEFT_OUT = new Set(
  'SCRIPT STYLE NOSCRIPT TEMPLATE CODE KBD SAMP TEXTAREA INPUT SELECT OPTION DATALIST OBJECT EMBED IFRAME FRAME AUDIO VIDEO CANVAS SVG MATH math HEAD TITLE RT RP METER PROGRESS title desc metadata defs symbol style script'.split(
    ' ',
  ),
);

/**
 * Returns how much of an element is read: all of it, only the inner elements that are visible again (in a hidden
 * element), or nothing. Nothing is read of an element that is not drawn or not visible, or that is code, a field, or
 * text that the reader is writing.
 */
export function isRead(given: Element, style = getComputedStyle(given)): 'all' | 'parts' | 'none' {
  const element = own(given);
  if (isLeftOut(element)) return 'none';
  const { display } = style;
  if (display === 'none' || (display !== 'inline' && style.contentVisibility === 'hidden')) return 'none';
  if (isUnseen(element, style) || isIcon(element, style)) return 'none';
  if (element instanceof HTMLDetailsElement && !element.open) return 'parts';
  if (style.visibility !== 'visible' && !isVeiled(element)) return 'parts';
  if (!element.checkVisibility() && (display !== 'contents' || !isDrawn(given))) return 'none';
  return style.fontSize === '0px' ? 'parts' : 'all';
}

/** Whether an element is never text of a story, however it is drawn. */
function isLeftOut(element: Element): boolean {
  const { tagName } = element;
  if (LEFT_OUT.has(tagName) || (tagName === 'PRE' && isCode(element))) return true;
  if (element instanceof HTMLElement) return element.isContentEditable || isFormula(element);
  return tagName === 'svg' && !isWritten(element);
}

/**
 * Returns whether the page hides itself completely until one of its scripts has run, which may never happen. Text of
 * such a page does not count as hidden.
 */
function isVeiled({ ownerDocument: { body } }: Element): boolean {
  return getComputedStyle(body).visibility !== 'visible';
}

/** Returns true for a node inside an element that is never read. */
export function isInsideUnread(node: Node): boolean {
  for (let at = elementAround(node); at; at = elementAround(at)) if (isRead(at) === 'none') return true;
  return false;
}

/** Returns whether preformatted text is code: it is marked as code, or it does not read like sentences. */
function isCode(pre: Element): boolean {
  return pre.querySelector('code, samp, kbd') !== null || !isProse(pre.textContent);
}

/**
 * Patterns for formulas: drawn by a script, or written as source for a script. The `math` element of MathML is left out
 * by its tag.
 */
const DRAWN = /(?:^|[\s_-])(?:mwe-math|katex|mathjax|mjx)(?![a-z])/i;
const SOURCE = /^\s*(?:\$|\\[([])|\\[a-z]+\s*[{_^]/;
const WRITTEN = /(?:^|[\s_-])(?:math|tex|latex|equation|formula)(?![a-z])/i;

/**
 * Returns whether an element is a formula, drawn or as TeX source. An element of class “tex” with “\frac{a}{b}” is a
 * formula. An element of class “math” around sentences is not.
 */
function isFormula(element: Element): boolean {
  const { tagName, className } = element;
  if (/^(?:MJX|TEX)-/.test(tagName) || DRAWN.test(className)) return true;
  return WRITTEN.test(className) && SOURCE.test(element.textContent) && !isProse(element.textContent);
}

/** The least width of a drawing in CSS pixels. Smaller drawings are icons. */
const DRAWING = 200;

/**
 * Returns whether a drawing is written text, as slides are. A page set in SVG is written text, a chart with labels is
 * not.
 */
function isWritten(drawing: Element): boolean {
  const texts = [...drawing.querySelectorAll('text')].map(({ textContent }) => textContent);
  return isProse(texts.join(' ')) && drawing.getBoundingClientRect().width >= DRAWING;
}

/** Returns whether an element uses an icon font, which draws a sign in place of a word such as menu. */
function isIcon({ className }: Element, style: CSSStyleDeclaration): boolean {
  return (
    className !== '' && /icon|symbol/i.test(className) && /\b(?:icons?|symbols?)\b/i.test(style.fontFamily)
  );
}

/**
 * Returns whether an element is drawn. An element without a box of its own (display: contents) is drawn when its parent
 * is.
 */
function isDrawn(element: Element): boolean {
  const around = elementAround(element);
  if (
    around instanceof HTMLDetailsElement &&
    !around.open &&
    element !== around.querySelector(':scope > summary')
  )
    return false;
  if (!around || own(around).checkVisibility()) return true;
  return getComputedStyle(around).display === 'contents' && isDrawn(around);
}

/** Returns the element in which a node is drawn: the slot for a slotted node, the host for the content of a shadow root. */
function elementAround(node: Node): Element | null {
  const { assignedSlot, parentNode } = own(node as Element);
  const around = assignedSlot ?? parentNode;
  if (around instanceof ShadowRoot) return around.host;
  return around instanceof Element ? around : null;
}
