import type { Browser } from 'webextension-polyfill';

/**
 * The browser's extension interface with promises, in Chromium and Firefox; the only place that asks for it. Firefox has
 * a `chrome` too, which knows no promises. No page can put another thing in the place of either.
 */
export const browser = (
  import.meta.env.FIREFOX ? (globalThis as { browser?: unknown }).browser : globalThis.chrome
) as Browser;

/** Opens the side panel, or Firefox's sidebar; only right at a click, before anything is awaited. */
export function openPanel(tabId: number | undefined): Promise<void> {
  const panel = (globalThis as { chrome?: { sidePanel?: typeof chrome.sidePanel } }).chrome?.sidePanel;
  if (panel && tabId !== undefined) return panel.open({ tabId });
  return browser.sidebarAction?.open() ?? Promise.resolve();
}
