import type { Browser } from 'playwright-core';
import type { ExtensionBrowser } from '../../src/tools/launch-extension.ts';

/** A browser whose extension can run code, so that its storage can be reset. */
type Kept = ExtensionBrowser & {
  inBackground<T, Given>(run: (given: Given) => T | Promise<T>, given: Given): Promise<T>;
};

const ORIGINS = { chromium: 'chrome-extension', firefox: 'moz-extension' } as const;

/**
 * The running browsers of this process by kind. The first file that asks for a browser starts it, and the end of the
 * process closes it.
 */
const running = new Map<string, Promise<{ alive: boolean }>>();

/**
 * Starts a browser with the extension, or returns the running one. Its `close` resets the browser to its state after
 * installing.
 */
export async function keepLaunched<T extends Kept>(
  name: keyof typeof ORIGINS,
  start: () => Promise<T>,
): Promise<T> {
  const { browser } = await keep(name, async () => {
    const browser = await start();
    const stored: unknown = await browser.inBackground(() => chrome.storage.local.get(null), null);
    const kept = {
      alive: true,
      browser: { ...browser, close: () => forget(browser, `${ORIGINS[name]}://${browser.id}/`, stored) },
    };
    browser.context.once('close', () => {
      kept.alive = false;
    });
    atEnd(() => browser.close());
    return kept;
  });
  return browser;
}

/** Starts a browser without the extension, or returns the running one. Its `close` closes its pages. */
export async function keepPlain(start: () => Promise<Browser>): Promise<Browser> {
  const { browser } = await keep('plain', async () => {
    const browser = await start();
    const kept = { alive: true, browser };
    browser.once('disconnected', () => {
      kept.alive = false;
    });
    const end = browser.close.bind(browser);
    atEnd(end);
    // Closing the contexts also closes their pages.
    browser.close = async () => {
      for (const context of browser.contexts()) await context.close();
    };
    return kept;
  });
  return browser;
}

async function keep<T extends { alive: boolean }>(name: string, start: () => Promise<T>): Promise<T> {
  const known = (await running.get(name)?.catch(() => undefined)) as T | undefined;
  if (known?.alive) return known;
  const starting = start();
  running.set(name, starting);
  return starting;
}

/** Adds a function that Vitest waits for before it ends the process. */
function atEnd(end: () => Promise<void>): void {
  const { onCleanup } = (
    globalThis as unknown as { __vitest_worker__: { onCleanup(end: () => Promise<void>): void } }
  ).__vitest_worker__;
  // A browser that has already ended cannot be closed again, so this error is ignored.
  onCleanup(() => end().catch(() => undefined));
}

/** Resets a browser to its state after installing: one empty tab, and the storage that installing left. */
async function forget(
  { context, inBackground, close }: Kept,
  inside: string,
  stored: unknown,
): Promise<void> {
  try {
    context.removeAllListeners('request');
    for (const open of context.pages().slice(1)) await open.close();
    // This page of the extension reads no tables. Code in the page can reach the page's own storage in both browsers.
    const page = await context.newPage();
    await page.goto(`${inside}privacy.html`);
    await page.evaluate(async () => {
      localStorage.clear();
      for (const { name } of await indexedDB.databases())
        await new Promise((resolve) => {
          const asked = indexedDB.deleteDatabase(name!);
          asked.onsuccess = resolve;
        });
    });
    await inBackground(async (stored) => {
      await Promise.all([chrome.storage.local.clear(), chrome.storage.sync.clear()]);
      await chrome.storage.local.set(stored as Record<string, unknown>);
    }, stored);
    await page.close();
  } catch {
    // The browser cannot be reset after what a test file did. It is closed, so the next file starts another one.
    await close().catch(() => undefined);
  }
}
