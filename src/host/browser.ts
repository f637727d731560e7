import type { Browser } from 'webextension-polyfill';

/**
 * The browser's extension interface with promises, as webextension-polyfill describes it; the only place that asks for it.
 * The browsers this is built for have that interface themselves, so that no build holds the library: Chromium under `chrome`,
 * Firefox under `browser` (its `chrome` knows no promises). Only answers to messages differ: `hear-messages.ts`.
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
