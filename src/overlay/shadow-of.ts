import { own } from './own.ts';

/** Elements that can have a shadow root, besides custom elements (DOM Standard, attachShadow). */
const HOSTS = new Set(
  'ARTICLE ASIDE BLOCKQUOTE BODY DIV FOOTER H1 H2 H3 H4 H5 H6 HEADER MAIN NAV P SECTION SPAN'.split(' '),
);

type Opened = (element: HTMLElement) => ShadowRoot | null;

/**
 * Chromium's function by which content scripts read closed roots (chrome.dom). Firefox has the same as a property of
 * the element.
 */
const opened = (globalThis as unknown as { chrome?: { dom?: { openOrClosedShadowRoot?: Opened } } }).chrome
  ?.dom?.openOrClosedShadowRoot;

/**
 * Returns the shadow root that an element draws in place of its children, or null if there is none. Includes closed
 * roots if the browser lets content scripts read them.
 */
export function shadowOf(given: Element): ShadowRoot | null {
  const element = own(given);
  const { shadowRoot, tagName } = element;
  if (shadowRoot || !(HOSTS.has(tagName) || tagName.includes('-'))) return shadowRoot;
  // `openOrClosedShadowRoot` exists in Firefox 63 and later.
  const closed = (element as { openOrClosedShadowRoot?: ShadowRoot | null }).openOrClosedShadowRoot;
  return closed ?? (opened && element instanceof HTMLElement ? opened(element) : null);
}
