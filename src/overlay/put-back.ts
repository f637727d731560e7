import { own } from './own.ts';
import { sortInPageOrder } from './sort-in-page-order.ts';
import { countWords, squeeze } from './story-blocks.ts';
import { textsIn } from './texts-in.ts';

/** The least number of words in a sentence. */
const FEWEST = 5;
/** The greatest share of links in a sentence that is restored, counted in letters. */
const LINKED = 0.8;

/**
 * Returns the texts of a story and restores two kinds of parts that were left out between its paragraphs:
 * - a sentence of which at most the share `LINKED` is a link, if its element has the tag and class of a kept element
 * beside it
 * - a heading that is a button
 */
export function putBack(texts: readonly Text[]): Text[] {
  const kept = new Set<Node>(texts);
  const holders = new Set<Element>();
  for (const { data, parentElement } of texts) {
    if (!/\S/.test(data)) continue;
    for (let at = parentElement; at && !holders.has(at); at = own(at).parentElement) holders.add(at);
  }
  const found: Text[] = [];
  for (const holder of holders) {
    const children = [...own(holder).children];
    const inStory = children.map((child) => holders.has(child));
    const first = inStory.indexOf(true);
    const last = inStory.lastIndexOf(true);
    const forms = new Set(children.filter((_, i) => inStory[i]).map(formOf));
    for (let i = 0; i < last; i++) {
      const child = children[i]!;
      if (inStory[i]) continue;
      const isLine = i > first && forms.has(formOf(child)) && isSentence(child);
      if (isLine || isPressedHeading(child)) found.push(...textsIn(child));
    }
  }
  return found.length === 0
    ? [...texts]
    : sortInPageOrder([...texts, ...found.filter((text) => !kept.has(text))], (text) => text);
}

function formOf(element: Element): string {
  return `${element.tagName} ${element.getAttribute('class') ?? ''}`;
}

/** Returns whether a heading is a button that unfolds the part under it. */
function isPressedHeading(element: Element): boolean {
  return /^H[2-6]$/.test(element.tagName) && element.querySelector(':scope > button') !== null;
}

function isSentence(element: Element): boolean {
  const says = squeeze(element.textContent ?? '');
  if (countWords(says) < FEWEST || !/[.!?…]['"”’)\]]*$/.test(says)) return false;
  const linked = [...element.querySelectorAll('a')].reduce(
    (sum, { textContent }) => sum + squeeze(textContent ?? '').length,
    0,
  );
  return linked <= says.length * LINKED;
}
