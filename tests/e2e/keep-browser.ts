import type { Browser } from 'playwright-core';
import type { ExtensionBrowser } from '../../src/tools/launch-extension.ts';

/** A browser whose extension can be asked, so that it can be made to forget. */
type Kept = ExtensionBrowser & {
  inBackground<T, Given>(run: (given: Given) => T | Promise<T>, given: Given): Promise<T>;
};

const ORIGINS = { chromium: 'chrome-extension', firefox: 'moz-extension' } as const;

/** Browsers of this process, by what they are: started by the first file that asks, ended with the process. */
const running = new Map<string, Promise<{ alive: boolean }>>();

/** Starts a browser with the extension, or gives the one that runs, whose `close` brings it back to where it was after installing. */
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

/** The same for a browser without the extension, whose `close` closes its pages. */
export async function keepPlain(start: () => Promise<Browser>): Promise<Browser> {
  const { browser } = await keep('plain', async () => {
    const browser = await start();
    const kept = { alive: true, browser };
    browser.once('disconnected', () => {
      kept.alive = false;
    });
    const end = browser.close.bind(browser);
    atEnd(end);
    // Pages reach it by their context, too.
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

/** Vitest waits for this before it ends the process. */
function atEnd(end: () => Promise<void>): void {
  const { onCleanup } = (
    globalThis as unknown as { __vitest_worker__: { onCleanup(end: () => Promise<void>): void } }
  ).__vitest_worker__;
  // One that ended before cannot be ended again.
  onCleanup(() => end().catch(() => undefined));
}

/** As after installing: one empty tab, and in storage what the install left. */
async function forget(
  { context, inBackground, close }: Kept,
  inside: string,
  stored: unknown,
): Promise<void> {
  try {
    context.removeAllListeners('request');
    for (const open of context.pages().slice(1)) await open.close();
    // A page of the extension that reads no tables; in it, what the page's own storage holds is reached in both browsers.
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
    // Whatever the file did to it: the next has another one.
    await close().catch(() => undefined);
  }
}
