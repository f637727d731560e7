/** What an element's edge does to a word that stands at it: nothing, parts it, or ends the line of thought too. */
export type Edge = 'none' | 'word' | 'line';

/** Things of their own where they stand in a line: the 3 of a footnote mark, pictures, buttons. */
const OWN =
  'SUP SUB BUTTON LI CODE KBD SAMP TEXTAREA INPUT SELECT OBJECT EMBED IFRAME AUDIO VIDEO CANVAS IMG SVG MATH svg math METER PROGRESS';
const STANDS_APART = new Set(OWN.split(' '));
/** A box with no more letters than this is part of a word: a drop cap, letters set one by one. */
const LETTERS = 2;

/**
 * What an element's edge does to words: nothing where it only styles them (M<a>other</a>) or is not shown at
 * all; it parts words where a thing of its own stands in a sentence, and ends the line where it is a block or one
 * of several boxes side by side.
 */
export function findEdge(element: Element): Edge {
  if (element.tagName === 'BR') return 'line';
  const { display, float } = getComputedStyle(element);
  if (display === 'none') return 'none';
  const apart = STANDS_APART.has(element.tagName);
  if (!apart && /^(inline|contents|ruby|ruby-.*)$/.test(display)) return 'none';
  const inLine = /^(inline|contents)/.test(display);
  if (!apart && (inLine || float !== 'none') && holdsLetters(element)) return 'none';
  return inLine && isBesideText(element) ? 'word' : 'line';
}

/** A picture or box in a sentence has text next to it; entries of a menu have each other. */
function isBesideText({ previousSibling, nextSibling }: Element): boolean {
  return [previousSibling, nextSibling].some(
    (node) => node?.nodeType === Node.TEXT_NODE && /[\p{L}\p{N}]/u.test(node.nodeValue ?? ''),
  );
}

function holdsLetters(element: Element): boolean {
  const text = element.textContent.trim();
  return text !== '' && text.length <= LETTERS;
}
