import { type Element, type Node, Window } from 'happy-dom';

/** Elements whose text is not read to or by anyone. */
const UNREAD = new Set(
  'HEAD TITLE SCRIPT STYLE NOSCRIPT TEMPLATE CODE PRE KBD SAMP TEXTAREA INPUT SELECT OPTION DATALIST SVG MATH CANVAS VIDEO AUDIO OBJECT IFRAME'.split(
    ' ',
  ),
);

/** Elements words run through: a link in mid word, a drop cap. Everything else ends a paragraph. */
const INLINE = new Set(
  'A ABBR ACRONYM B BDI BDO BIG CITE DATA DEL DFN EM FONT I INS MARK NOBR Q S SMALL SPAN STRIKE STRONG SUB SUP TIME TT U VAR WBR'.split(
    ' ',
  ),
);

/**
 * The text of an HTML page as a reader sees it, a blank line between blocks; without scripts, styles, code,
 * form fields and what is hidden by attribute. Style sheets are not read and nothing is loaded or run.
 */
export function readHtml(html: string): string {
  const window = new Window({
    settings: { disableCSSFileLoading: true, disableJavaScriptFileLoading: true },
  });
  try {
    const { body } = new window.DOMParser().parseFromString(html, 'text/html');
    const pieces: string[] = [];
    collect(body, pieces);
    return pieces
      .join('')
      .replace(/ *([ \n]) */g, '$1')
      .split(/\s*\u2029\s*/)
      .filter((block) => block !== '')
      .join('\n\n');
  } finally {
    window.close();
  }
}

/** Blocks end with U+2029, the paragraph separator. */
function collect(node: Node, pieces: string[]): void {
  for (const child of node.childNodes) {
    if (child.nodeType === child.TEXT_NODE) {
      pieces.push((child.textContent ?? '').replace(/\s+/g, ' '));
    } else if (child.nodeType === child.ELEMENT_NODE) {
      collectElement(child as Element, pieces);
    }
  }
}

function collectElement(element: Element, pieces: string[]): void {
  const tag = element.tagName.toUpperCase();
  if (UNREAD.has(tag) || isHidden(element)) {
    if (!INLINE.has(tag)) pieces.push(' ');
    return;
  }
  if (tag === 'BR') pieces.push('\n');
  const edge = INLINE.has(tag) || tag === 'BR' ? '' : '\u2029';
  pieces.push(edge);
  collect(element, pieces);
  pieces.push(edge);
}

function isHidden(element: Element): boolean {
  const style = element.getAttribute('style') ?? '';
  return (
    element.hasAttribute('hidden') ||
    /(^|;)\s*(display\s*:\s*none|visibility\s*:\s*hidden)/i.test(style) ||
    /^(true|)$/.test(element.getAttribute('contenteditable') ?? 'false')
  );
}
