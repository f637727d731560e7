/** What an element's edge does to a word that stands at it: nothing, parts it, or ends the line of thought too. */
export type Edge = 'none' | 'word' | 'line';

/** Things of their own that stand in a line: the 3 of a footnote mark, buttons, menu entries set side by side. */
const OWN =
  'SUP SUB BUTTON LI CODE KBD SAMP TEXTAREA INPUT SELECT OBJECT EMBED IFRAME AUDIO VIDEO CANVAS IMG SVG MATH svg math METER PROGRESS';
const STANDS_APART = new Set(OWN.split(' '));
/** A box with no more letters than this is part of a word: a drop cap, letters set one by one. */
const LETTERS = 2;

/**
 * What an element's edge does to words: nothing where it only styles them (M<a>other</a>) or is not shown at
 * all; it parts words where a thing of its own stands in the line, and ends the line where it is a block.
 */
export function findEdge(element: Element): Edge {
  if (element.tagName === 'BR') return 'line';
  const style = element.ownerDocument.defaultView?.getComputedStyle(element);
  if (!style) return 'line';
  const { display, float } = style;
  if (display === 'none') return 'none';
  const apart = STANDS_APART.has(element.tagName);
  if (/^(inline|contents|ruby|ruby-.*)$/.test(display)) return apart ? 'word' : 'none';
  const inLine = display.startsWith('inline-');
  if (!apart && (inLine || float !== 'none') && holdsLetters(element)) return 'none';
  return inLine ? 'word' : 'line';
}

function holdsLetters(element: Element): boolean {
  const text = element.textContent.trim();
  return text !== '' && text.length <= LETTERS;
}
