import { type Document, type Element, type Node, Window } from 'happy-dom';

// Both lists are those of the overlay, so that a saved page counts as the page itself does.

/** Never read to a child, or not text of the page. */
const LEFT_OUT = new Set(
  'SCRIPT STYLE NOSCRIPT TEMPLATE CODE PRE KBD SAMP TEXTAREA INPUT SELECT OPTION DATALIST OBJECT EMBED IFRAME FRAME AUDIO VIDEO CANVAS SVG MATH HEAD TITLE RT RP METER PROGRESS'.split(
    ' ',
  ),
);

/** Elements words run through: a link in mid word, a drop cap. Everything else ends a paragraph. */
const INLINE = new Set(
  'A ABBR ACRONYM B BDI BDO BIG CITE DATA DEL DFN EM FONT I INS LABEL MARK Q S SMALL SPAN STRIKE STRONG TIME TT U VAR WBR'.split(
    ' ',
  ),
);

const PARAGRAPH_SEPARATOR = '\u2029';

/** What a page says. */
export interface PageText {
  /** Its title, else its first heading; empty when it has neither. */
  readonly title: string;
  readonly text: string;
}

/**
 * The text of an HTML page as a reader sees it, a blank line between blocks; without scripts, styles, code,
 * form fields and what is hidden by attribute. Style sheets are not read and nothing is loaded or run.
 */
export function readHtml(html: string): PageText {
  const window = new Window({
    settings: { disableCSSFileLoading: true, disableJavaScriptFileLoading: true },
  });
  try {
    const document = new window.DOMParser().parseFromString(html, 'text/html');
    const text = textOf(document)
      .replace(/ +/g, ' ')
      .split(/\s*\u2029\s*/)
      .filter((block) => block !== '')
      .join('\n\n');
    return { title: titleOf(document), text };
  } finally {
    window.close();
  }
}

function titleOf(document: Document): string {
  const [title] = ['title', 'h1']
    .map((name) => document.getElementsByTagName(name)[0]?.textContent ?? '')
    .map((says) => says.replace(/\s+/g, ' ').trim())
    .filter((says) => says !== '');
  return title ?? '';
}

/** Kept on a stack of its own, because pages nest deeper than calls may. */
function textOf({ body }: Document): string {
  const pieces: string[] = [];
  const waiting: (Node | string)[] = [body];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (typeof next === 'string') pieces.push(next);
    else if (next.nodeType === next.TEXT_NODE) pieces.push((next.textContent ?? '').replace(/\s+/g, ' '));
    else if (next.nodeType === next.ELEMENT_NODE) {
      const edge = INLINE.has((next as Element).tagName) ? '' : PARAGRAPH_SEPARATOR;
      const inside = isRead(next as Element) ? [...next.childNodes].reverse() : [];
      pieces.push(edge);
      waiting.push(edge, ...inside);
    }
  }
  return pieces.join('');
}

function isRead(element: Element): boolean {
  const style = element.getAttribute('style') ?? '';
  return !(
    LEFT_OUT.has(element.tagName.toUpperCase()) ||
    element.hasAttribute('hidden') ||
    /(^|;)\s*(display\s*:\s*none|visibility\s*:\s*hidden)/i.test(style) ||
    /^(true|)$/.test(element.getAttribute('contenteditable') ?? 'false')
  );
}
