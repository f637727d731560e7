import { type PassageLine, writeLines } from './passage-lines.ts';

const LINES = new Set(
  'P H1 H2 H3 H4 H5 H6 LI BLOCKQUOTE DIV SECTION ARTICLE TR PRE FIGCAPTION DT DD'.split(' '),
);
const LEFT_OUT = 'script, style, noscript, template, svg, nav, button, select, textarea, rt, rp';

/** The text of a piece of HTML with its headings, paragraphs and lists. Nothing of it is run or loaded. */
export function readPasted(html: string): string {
  return writeLines(readHtmlLines(new DOMParser().parseFromString(html, 'text/html')));
}

/** The lines of a parsed page: every block with words of its own is one. */
export function readHtmlLines(doc: Document): Pick<PassageLine, 'kind' | 'level' | 'text'>[] {
  for (const element of doc.querySelectorAll(LEFT_OUT)) element.remove();
  const lines: Pick<PassageLine, 'kind' | 'level' | 'text'>[] = [];
  let words = '';
  let around: Element = doc.body;
  function endLine(): void {
    const text = words
      .replace(/\u00ad/g, '')
      .replace(/\s+/g, ' ')
      .trim();
    words = '';
    if (text === '') return;
    const kind = around.closest('h1, h2, h3, h4, h5, h6, li');
    if (kind?.tagName === 'LI') lines.push({ kind: 'item', level: 0, text });
    else if (kind) lines.push({ kind: 'heading', level: Number(kind.tagName[1]), text });
    else lines.push({ kind: 'paragraph', level: 0, text });
  }
  function walk(element: Element): void {
    const isLine = LINES.has(element.tagName);
    if (isLine) {
      endLine();
      around = element;
    }
    for (const child of element.childNodes) {
      if (child.nodeType === Node.TEXT_NODE) words += child.nodeValue;
      else if (child.nodeName === 'BR') endLine();
      else if (child.nodeType === Node.ELEMENT_NODE) walk(child as Element);
    }
    if (isLine) {
      endLine();
      around = element.parentElement ?? doc.body;
    } else if (/^T[DH]$/.test(element.tagName)) words += ' ';
  }
  walk(doc.body);
  endLine();
  return lines;
}
