import { isProse } from './is-prose.ts';
import { isUnseen } from './is-unseen.ts';
import { own } from './own.ts';

/** Never read to a child, or not text of the page. */
const LEFT_OUT = new Set(
  'SCRIPT STYLE NOSCRIPT TEMPLATE CODE KBD SAMP TEXTAREA INPUT SELECT OPTION DATALIST OBJECT EMBED IFRAME FRAME AUDIO VIDEO CANVAS SVG MATH math HEAD TITLE RT RP METER PROGRESS title desc metadata defs symbol style script'.split(
    ' ',
  ),
);

/**
 * How much of an element is read: all, only elements inside that show again (of a hidden one), or none of it,
 * because it is not drawn or not seen, or is code, a field, or text the reader is writing.
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

/** Whether the page hides all of itself until a script of it has run, which may never be; no text of it is hidden by that. */
function isVeiled({ ownerDocument: { body } }: Element): boolean {
  return getComputedStyle(body).visibility !== 'visible';
}

/** True for a node somewhere inside an element that is never read. */
export function isInsideUnread(node: Node): boolean {
  for (let at = elementAround(node); at; at = elementAround(at)) if (isRead(at) === 'none') return true;
  return false;
}

/** Preformatted text is code where it says so, and where it does not read like sentences. */
function isCode(pre: Element): boolean {
  return pre.querySelector('code, samp, kbd') !== null || !isProse(pre.textContent);
}

/** Formulas as pages draw them by a script, or as they write them for one; `math` of MathML is left out by its tag. */
const DRAWN = /(?:^|[\s_-])(?:mwe-math|katex|mathjax|mjx)(?![a-z])/i;
const SOURCE = /^\s*(?:\$|\\[([])|\\[a-z]+\s*[{_^]/;
const WRITTEN = /(?:^|[\s_-])(?:math|tex|latex|equation|formula)(?![a-z])/i;

/** Whether an element is a formula, drawn or as its TeX source: class="tex" with “\frac{a}{b}” is, “math” over sentences is not. */
function isFormula(element: Element): boolean {
  const { tagName, className } = element;
  if (/^(?:MJX|TEX)-/.test(tagName) || DRAWN.test(className)) return true;
  return WRITTEN.test(className) && SOURCE.test(element.textContent) && !isProse(element.textContent);
}

/** Smaller drawings are signs, in CSS pixels. */
const DRAWING = 200;

/** Whether a drawing is written text, as slides are: a page set in SVG is, a chart with its labels is not. */
function isWritten(drawing: Element): boolean {
  const texts = [...drawing.querySelectorAll('text')].map(({ textContent }) => textContent);
  return isProse(texts.join(' ')) && drawing.getBoundingClientRect().width >= DRAWING;
}

/** Fonts of pictures draw a sign in place of a word such as menu. */
function isIcon({ className }: Element, style: CSSStyleDeclaration): boolean {
  return (
    className !== '' && /icon|symbol/i.test(className) && /\b(?:icons?|symbols?)\b/i.test(style.fontFamily)
  );
}

/** An element without a box of its own (display: contents) is drawn when its parent is. */
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

/** The element a node is drawn in: of a node in a slot that slot, of a shadow root its host. */
function elementAround(node: Node): Element | null {
  const { assignedSlot, parentNode } = own(node as Element);
  const around = assignedSlot ?? parentNode;
  if (around instanceof ShadowRoot) return around.host;
  return around instanceof Element ? around : null;
}
