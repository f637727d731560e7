import library from 'webextension-polyfill';

/**
 * The browser's extension interface with promises; the only place that asks for it. Background and pages of the extension have it from
 * webextension-polyfill, so that messages are answered in the same way in every browser. The scripts that go into pages have
 * `bare-browser.ts` in place of the library (`wxt.config.ts`): it is an eighth of what they may weigh.
 */
export const browser = library;

/** Opens the side panel, or Firefox's sidebar; only right at a click, before anything is awaited. */
export function openPanel(tabId: number | undefined): Promise<void> {
  const panel = (globalThis as { chrome?: { sidePanel?: typeof chrome.sidePanel } }).chrome?.sidePanel;
  if (panel && tabId !== undefined) return panel.open({ tabId });
  return browser.sidebarAction?.open() ?? Promise.resolve();
}
