import { isTakenOut, isUnseen } from './is-unseen.ts';
import { isPlaced } from './join-pieces.ts';
import { own } from './own.ts';

/**
 * The effect of an element's edge on a word beside it: `none`, `word` (the edge splits the word) or `line` (the edge
 * also ends the line).
 */
export type Edge = 'none' | 'word' | 'line';

/** Elements that are separate things within a line: the 3 of a footnote mark, pictures, buttons. */
const OWN =
  'SUP SUB Q BUTTON LI CODE KBD SAMP TEXTAREA INPUT SELECT OBJECT EMBED IFRAME AUDIO VIDEO CANVAS IMG SVG MATH svg math METER PROGRESS';
const STANDS_APART = new Set(OWN.split(' '));
/** The elements of `STANDS_APART` that are always part of a sentence, whatever is beside them. */
const PHRASES = new Set('SUP SUB Q CODE KBD SAMP'.split(' '));
/** The greatest number of letters in a box that is part of a word: a drop cap, or letters set one by one. */
const LETTERS = 2;
/** The least margin that looks like a blank, in CSS pixels. */
const GAP = 4;

/**
 * Returns the effect of an element's edge on words:
 * - `none` if the element only styles words (M<a>other</a>) or is not shown.
 * - `word` if the element is a separate thing in a sentence.
 * - `line` if the element is a block, or one of several boxes side by side.
 */
export function findEdge(given: Element, style = getComputedStyle(given)): Edge {
  const element = own(given);
  const { display } = style;
  if (display === 'none') return 'none';
  const { tagName } = element;
  if (tagName === 'BR' || tagName === 'text') return 'line';
  if (tagName === 'tspan') return isPlaced(given, style) ? 'word' : 'none';
  const apart = STANDS_APART.has(tagName);
  if (!apart && /^(inline|contents|ruby|ruby-.*)$/.test(display)) {
    if (display !== 'inline' || !hasGap(element, style)) return 'none';
    return tagName === 'A' ? 'line' : 'word';
  }
  const inLine = /^(inline|contents)/.test(display);
  if (!apart && (inLine || style.float !== 'none') && holdsLetters(element)) return 'none';
  return edgeOfThing(element, style, inLine);
}

/** Returns the edge of a block, or of a separate thing within a line. */
function edgeOfThing(element: Element, style: CSSStyleDeclaration, inLine: boolean): Edge {
  if (inLine && PHRASES.has(element.tagName)) return isOrdinal(element) ? 'none' : 'word';
  if (inLine) return isBesideText(element) ? 'word' : 'line';
  return isTakenOut(style) && (style.visibility !== 'visible' || isUnseen(element, style)) ? 'none' : 'line';
}

/** Returns whether a style sets an element apart from its neighbours. Words and links of a menu may touch in the source. */
function hasGap({ previousSibling, nextSibling }: Element, style: CSSStyleDeclaration): boolean {
  return (
    (previousSibling?.nodeType === Node.ELEMENT_NODE && isWide(style.marginLeft, style.paddingLeft)) ||
    (nextSibling?.nodeType === Node.ELEMENT_NODE && isWide(style.marginRight, style.paddingRight))
  );
}

function isWide(margin: string, padding: string): boolean {
  return Number.parseFloat(margin) + Number.parseFloat(padding) >= GAP;
}

/** Returns whether an element is the raised ending of an ordinal number, such as the th of 5th. */
function isOrdinal({ textContent, previousSibling }: Element): boolean {
  return /^(?:st|nd|rd|th)$/i.test(textContent) && /\d$/.test(previousSibling?.textContent ?? '');
}

/**
 * Returns whether an element has text next to it, as a picture or box in a sentence has. Entries of a menu have other
 * entries next to them.
 */
function isBesideText({ previousSibling, nextSibling }: Element): boolean {
  return [previousSibling, nextSibling].some(
    (node) => node?.nodeType === Node.TEXT_NODE && /[\p{L}\p{N}]/u.test(node.nodeValue ?? ''),
  );
}

function holdsLetters(element: Element): boolean {
  const text = element.textContent.trim();
  return text !== '' && text.length <= LETTERS;
}
