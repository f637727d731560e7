import type { FoundLine } from './opened-file.ts';

const LINES = new Set(
  'P H1 H2 H3 H4 H5 H6 LI BLOCKQUOTE DIV SECTION ARTICLE TR PRE FIGCAPTION DT DD HR ADDRESS HEADER FOOTER MAIN ASIDE TABLE UL OL'.split(
    ' ',
  ),
);
const LEFT_OUT =
  'script, style, noscript, template, svg, nav, button, select, textarea, rt, rp, iframe, object, video, audio, canvas, [hidden]';

/** The lines of a parsed page or a part of it: every block with words of its own is one. It takes out what is no text. */
export function readHtmlLines(root: Element): FoundLine[] {
  for (const element of root.querySelectorAll(LEFT_OUT)) element.remove();
  for (const mark of root.querySelectorAll('sup')) if (isFootnoteMark(mark)) mark.remove();
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
  function open(node: Node): void {
    if (node.nodeType === Node.TEXT_NODE) words += node.nodeValue;
    if (node.nodeType !== Node.ELEMENT_NODE) return;
    const { tagName } = node as Element;
    if (tagName === 'BR') endLine();
    else if (LINES.has(tagName)) {
      endLine();
      around = node as Element;
    }
  }
  function close(node: Node): void {
    if (node.nodeType !== Node.ELEMENT_NODE) return;
    const { tagName, parentElement } = node as Element;
    if (LINES.has(tagName)) {
      endLine();
      around = parentElement ?? root;
    } else if (tagName === 'TD' || tagName === 'TH') words += ' ';
  }
  // Walked without recursion: a hostile page is deeper than the browser's stack.
  let node: Node | null = root;
  while (node) {
    open(node);
    if (node.firstChild) {
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

function kindOf(element: Element): Pick<FoundLine, 'kind' | 'level'> {
  const kind = element.closest('h1, h2, h3, h4, h5, h6, li');
  if (!kind) return { kind: 'paragraph', level: 0 };
  return kind.tagName === 'LI'
    ? { kind: 'item', level: 0 }
    : { kind: 'heading', level: Number(kind.tagName[1]) };
}

/** The 3 of night<sup>3</sup>, not the th of 5<sup>th</sup> nor the 2 of m<sup>2</sup>. */
function isFootnoteMark(sup: Element): boolean {
  const text = (sup.textContent ?? '').trim();
  if (/^([*†‡]+|[[(](\d{1,3}|[a-z])[\])])$/.test(text)) return true;
  if (!/^(\d{1,3}|[a-z])$/.test(text)) return false;
  const before = sup.previousSibling?.textContent ?? '';
  return sup.querySelector('a') !== null || /(\p{L}{3}|[^\s\p{L}\d])\s*$/u.test(before);
}

/** How many pictures a part of a page has; signs of a few pixels are none. */
export function countPictures(root: Element): number {
  const SIGN = 32;
  return [...root.querySelectorAll('img, svg')].filter((image) => {
    if (image.parentElement?.closest('svg')) return false;
    if (image.tagName === 'svg' && !image.querySelector('image')) return false;
    return ['width', 'height'].every((side) => !(Number.parseInt(image.getAttribute(side) ?? '', 10) < SIGN));
  }).length;
}
