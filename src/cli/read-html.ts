import { type Document, type Element, type Node, Window } from 'happy-dom';
import { expectShallow } from '../passage/files/expect-shallow.ts';
import type { OpenedText } from './opened-text.ts';

// The overlay uses the same two lists, so that a saved page gives the same counts as the page itself.

/** Elements that are never read to a child or are not text of the page. */
const LEFT_OUT = new Set(
  'SCRIPT STYLE NOSCRIPT TEMPLATE CODE PRE KBD SAMP TEXTAREA INPUT SELECT OPTION DATALIST OBJECT EMBED IFRAME FRAME AUDIO VIDEO CANVAS SVG MATH HEAD TITLE RT RP METER PROGRESS'.split(
    ' ',
  ),
);

/** Elements that may occur inside a word: a link, a drop cap. Every other element ends a paragraph. */
const INLINE = new Set(
  'A ABBR ACRONYM B BDI BDO BIG CITE DATA DEL DFN EM FONT I INS LABEL MARK Q S SMALL SPAN STRIKE STRONG TIME TT U VAR WBR'.split(
    ' ',
  ),
);

const PARAGRAPH_SEPARATOR = '\u2029';

/**
 * Returns the text of an HTML page as a reader sees it, with a blank line between blocks. Scripts, styles, code, form
 * fields and parts hidden by attribute are left out. Style sheets are not read, and nothing is loaded or run. A page
 * without a title takes its first heading as the title. Throws `FileFault` if the page is nested too deep.
 */
export function readHtml(html: string): OpenedText {
  expectShallow(html);
  const window = new Window({
    settings: { disableCSSFileLoading: true, disableJavaScriptFileLoading: true },
  });
  try {
    const document = new window.DOMParser().parseFromString(html, 'text/html');
    const text = textWithin(document.body)
      .replace(/ +/g, ' ')
      .split(/\s*\u2029\s*/)
      .filter((block) => block !== '')
      .join('\n\n');
    return { title: titleOf(document), text };
  } finally {
    window.close();
  }
}

function titleOf({ documentElement }: Document): string {
  const title = findFirst(documentElement, 'TITLE')?.textContent ?? '';
  const heading = title.trim() === '' ? findFirst(documentElement, 'H1') : undefined;
  return (heading ? textWithin(heading) : title).replace(/\s+/g, ' ').trim();
}

/** Finds the first element of a name. Drawings are skipped, since their parts have titles too. */
function findFirst(root: Element, name: string): Element | undefined {
  const waiting: Node[] = [root];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (next.nodeName === name) return next as Element;
    if (next.nodeName.toUpperCase() !== 'SVG') pushReversed(waiting, next);
  }
  return undefined;
}

/** Returns the text within an element. Uses its own stack, because pages nest deeper than function calls can. */
function textWithin(root: Element): string {
  const pieces: string[] = [];
  const waiting: (Node | string)[] = [root];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (typeof next === 'string') pieces.push(next);
    else if (next.nodeType === next.TEXT_NODE) pieces.push((next.textContent ?? '').replace(/\s+/g, ' '));
    else if (next.nodeType === next.ELEMENT_NODE) {
      const edge = INLINE.has((next as Element).tagName) ? '' : PARAGRAPH_SEPARATOR;
      pieces.push(edge);
      waiting.push(edge);
      if (isRead(next as Element)) pushReversed(waiting, next);
    }
  }
  return pieces.join('');
}

/** Adds children one by one, since a page may have more children than a call can take arguments. */
function pushReversed(waiting: { push(node: Node): unknown }, { childNodes }: Node): void {
  for (let n = childNodes.length - 1; n >= 0; n--) waiting.push(childNodes[n]!);
}

/**
 * Patterns for formulas: the classes of scripts that draw formulas on the web, and of elements that contain formulas as
 * TeX source.
 */
const DRAWN = /(?:^|[\s_-])(?:mwe-math|katex|mathjax|mjx)(?![a-z])/i;
const WRITTEN = /(?:^|[\s_-])(?:math|tex|latex|equation|formula)(?![a-z])/i;
const SOURCE = /^\s*(?:\$|\\[([])[^.]*$|\\[a-z]+\s*[{_^]/;

function isFormula(element: Element): boolean {
  const names = element.getAttribute('class') ?? '';
  if (/^(?:MJX|TEX)-/.test(element.tagName) || DRAWN.test(names)) return true;
  return WRITTEN.test(names) && SOURCE.test(element.textContent ?? '');
}

function isRead(element: Element): boolean {
  const style = element.getAttribute('style') ?? '';
  return !(
    LEFT_OUT.has(element.tagName.toUpperCase()) ||
    isFormula(element) ||
    element.hasAttribute('hidden') ||
    /(^|;)\s*(display\s*:\s*none|visibility\s*:\s*hidden)/i.test(style) ||
    /^(true|)$/.test(element.getAttribute('contenteditable') ?? 'false')
  );
}
