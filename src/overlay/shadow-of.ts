import { own } from './own.ts';

/** Elements a shadow root can be given to, besides those with a name of their own (DOM Standard, attachShadow). */
const HOSTS = new Set(
  'ARTICLE ASIDE BLOCKQUOTE BODY DIV FOOTER H1 H2 H3 H4 H5 H6 HEADER MAIN NAV P SECTION SPAN'.split(' '),
);

type Opened = (element: HTMLElement) => ShadowRoot | null;

/** Chromium's function for content scripts to read closed roots (chrome.dom); Firefox has it at the element. */
const opened = (globalThis as unknown as { chrome?: { dom?: { openOrClosedShadowRoot?: Opened } } }).chrome
  ?.dom?.openOrClosedShadowRoot;

/**
 * The shadow root an element draws in place of its children, a closed one too where the browser lets a content script read it; null
 * where there is none.
 */
export function shadowOf(given: Element): ShadowRoot | null {
  const element = own(given);
  const { shadowRoot, tagName } = element;
  if (shadowRoot || !(HOSTS.has(tagName) || tagName.includes('-'))) return shadowRoot;
  // Firefox 63 and later.
  const closed = (element as { openOrClosedShadowRoot?: ShadowRoot | null }).openOrClosedShadowRoot;
  return closed ?? (opened && element instanceof HTMLElement ? opened(element) : null);
}
