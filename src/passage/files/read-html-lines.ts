import { finish } from './file-time.ts';
import type { FoundLine } from './opened-file.ts';

const LINES = new Set(
  'P H1 H2 H3 H4 H5 H6 LI BLOCKQUOTE DIV SECTION ARTICLE TR PRE FIGCAPTION DT DD HR ADDRESS HEADER FOOTER MAIN ASIDE TABLE UL OL'.split(
    ' ',
  ),
);
const LEFT_OUT = new Set(
  'SCRIPT STYLE NOSCRIPT TEMPLATE SVG NAV BUTTON SELECT TEXTAREA RT RP IFRAME OBJECT VIDEO AUDIO CANVAS'.split(
    ' ',
  ),
);

/**
 * Finds the lines of a parsed page or of a part of it. Every block with words of its own is a line. Yields once for
 * each node.
 */
export function* findHtmlLines(root: Element): Generator<void, FoundLine[]> {
  const lines: FoundLine[] = [];
  let words = '';
  let around: Element = root;
  function endLine(): void {
    const text = words
      .replace(/\u00ad/g, '')
      .replace(/\s+/g, ' ')
      .trim();
    words = '';
    if (text !== '') lines.push({ ...kindOf(around), text });
  }
  /** Reads the start of a node, and returns whether its content is read too. */
  function open(node: Node): boolean {
    if (node.nodeType === Node.TEXT_NODE) words += node.nodeValue;
    if (node.nodeType !== Node.ELEMENT_NODE) return false;
    const { tagName } = node as Element;
    if (node !== root && isLeftOut(node as Element, words)) return false;
    if (tagName === 'BR') endLine();
    else if (LINES.has(tagName)) {
      endLine();
      around = node as Element;
    }
    return true;
  }
  function close(node: Node): void {
    if (node.nodeType !== Node.ELEMENT_NODE) return;
    const { tagName, parentElement } = node as Element;
    if (LINES.has(tagName)) {
      endLine();
      around = parentElement ?? root;
    } else if (tagName === 'TD' || tagName === 'TH') words += ' ';
  }
  // The tree is walked without recursion, because a hostile page is deeper than the browser's stack.
  let node: Node | null = root;
  while (node) {
    yield;
    if (open(node) && node.firstChild) {
      node = node.firstChild;
      continue;
    }
    while (node) {
      close(node);
      if (node === root) node = null;
      else if (node.nextSibling) {
        node = node.nextSibling;
        break;
      } else node = node.parentNode;
    }
  }
  endLine();
  return lines;
}

/** Returns the same lines as `findHtmlLines`, at once, for a short page. */
export function readHtmlLines(root: Element): FoundLine[] {
  return finish(findHtmlLines(root));
}

function isLeftOut(element: Element, before: string): boolean {
  const tagName = element.tagName.toUpperCase();
  return (
    LEFT_OUT.has(tagName) ||
    element.hasAttribute('hidden') ||
    (tagName === 'SUP' && isFootnoteMark(element, before))
  );
}

function kindOf(element: Element): Pick<FoundLine, 'kind' | 'level'> {
  const kind = element.closest('h1, h2, h3, h4, h5, h6, li');
  if (!kind) return { kind: 'paragraph', level: 0 };
  return kind.tagName === 'LI'
    ? { kind: 'item', level: 0 }
    : { kind: 'heading', level: Number(kind.tagName[1]) };
}

/**
 * Tells whether an element is a footnote mark: the 3 of night<sup>3</sup>, but not the th of 5<sup>th</sup> nor the 2
 * of m<sup>2</sup>. `before` is the line up to the element.
 */
function isFootnoteMark(sup: Element, before: string): boolean {
  const text = (sup.textContent ?? '').trim();
  if (/^([*†‡]+|[[(](\d{1,3}|[a-z])[\])])$/.test(text)) return true;
  if (!/^(\d{1,3}|[a-z])$/.test(text)) return false;
  return sup.querySelector('a') !== null || /(\p{L}{3}|[^\s\p{L}\d])\s*$/u.test(before.slice(-20));
}

/** Counts the pictures in a part of a page. Icons of a few pixels are not counted. */
export function countPictures(root: Element): number {
  const SIGN = 32;
  return [...root.querySelectorAll('img, svg')].filter((image) => {
    if (image.parentElement?.closest('svg')) return false;
    if (image.tagName === 'svg' && !image.querySelector('image')) return false;
    return ['width', 'height'].every((side) => !(Number.parseInt(image.getAttribute(side) ?? '', 10) < SIGN));
  }).length;
}
