import library from 'webextension-polyfill';

/**
 * The browser's extension interface with promises. No other file accesses it. The background and the pages of the
 * extension use webextension-polyfill, so that messages are answered in the same way in every browser. The scripts that
 * go into pages use `bare-browser.ts` in place of the library (`wxt.config.ts`), because the library is an eighth of
 * the size they may have.
 */
export const browser = library;

/** Opens the side panel, or Firefox's sidebar. This works only directly at a click, before anything is awaited. */
export function openPanel(tabId: number | undefined): Promise<void> {
  const panel = (globalThis as { chrome?: { sidePanel?: typeof chrome.sidePanel } }).chrome?.sidePanel;
  if (panel && tabId !== undefined) return panel.open({ tabId });
  return browser.sidebarAction?.open() ?? Promise.resolve();
}
