import { existsSync } from 'node:fs';
import { type Browser, chromium, type Page } from 'playwright-core';
import { test } from 'vitest';
import { findChromium } from '../../src/tools/find-browser.ts';
import { builtExtension, type ExtensionBrowser, launchExtension } from '../../src/tools/launch-extension.ts';
import { type FirefoxBrowser, launchFirefox, launchPlainFirefox } from './firefox.ts';
import { keepLaunched, keepPlain } from './keep-browser.ts';
import { openSideWorld, type SideWorld } from './main-thread.ts';
import type { OneBrowser, whyOnlyIn } from './only-in.ts';
import { type PageServer, servePages } from './page-server.ts';

/** The browser of this run, chosen by the vitest project. */
export const browserName = (process.env.TEST_BROWSER ?? 'chromium') as OneBrowser;

/** A page of the browser itself. */
export const browserPage = browserName === 'firefox' ? 'about:support' : 'chrome://version/';

/** A real browser with the built extension, and a server for the test pages. */
export interface TestBrowser extends ExtensionBrowser, Pick<PageServer, 'address' | 'serve'> {
  /** Returns the address of a page of the extension. */
  inside(path: string): string;
  /** Opens an address in a tab in the foreground. */
  open(address: string): Promise<Page>;
  /** Runs a function in the background of the extension. The function cannot use variables from outside. */
  inBackground<T>(run: () => T | Promise<T>): Promise<T>;
  inBackground<T, Given>(run: (given: Given) => T | Promise<T>, given: Given): Promise<T>;
  /** Runs code in a world separate from a page's own scripts, so that their changes are not visible. */
  sideWorld(page: Page): Promise<Pick<SideWorld, 'evaluate'>>;
  /** Returns the text of the toolbar button's badge for the page in front. */
  badge(page: Page): Promise<string>;
  /** Runs a command for the tab in front, as its shortcut does. */
  command(name: keyof typeof SHORTCUTS): Promise<void>;
  /** Opens the context menu on an element of the page and chooses the extension's entry. */
  checkSelection(page: Page, selector: string): Promise<void>;
}

/**
 * Commands of the manifest, with letters that are pressed together with Alt and Shift. The manifest suggests a shortcut
 * only for the first command.
 */
const SHORTCUTS = { 'next-word': 'N', 'previous-word': 'P', 'open-desk': 'D' } as const;

/**
 * Starts the browser of this run in the state after installation. One browser serves all files of a worker. Closing it
 * closes its tabs and deletes what the extension has stored.
 */
export async function startBrowser(): Promise<TestBrowser> {
  if (browserName === 'firefox') return startFirefox();
  return serveBeside(await keepLaunched('chromium', startChromium));
}

/** Starts a browser for one test alone, such as a browser in another language (`es`). */
export async function startOwnBrowser(language?: string): Promise<TestBrowser> {
  return serveBeside(await (browserName === 'firefox' ? startOwnFirefox(language) : startChromium(language)));
}

/** Starts Firefox with functions for its window that only the Firefox tests use. */
export async function startFirefox(): Promise<TestBrowser & Omit<FirefoxBrowser, 'badge'>> {
  return serveBeside(await keepLaunched('firefox', startOwnFirefox));
}

async function startOwnFirefox(language?: string) {
  const launched = await launchFirefox(language);
  return {
    ...launched,
    async badge(page: Page) {
      await page.bringToFront();
      return launched.badge();
    },
    command: (name: keyof typeof SHORTCUTS) => pressShortcut(launched, name),
    async checkSelection(page: Page, selector: string) {
      await page.locator(selector).click({ button: 'right' });
      await launched.chooseFromMenu();
    },
  };
}

async function serveBeside<T extends ExtensionBrowser>(
  launched: T,
): Promise<T & Pick<TestBrowser, 'address' | 'serve' | 'inside' | 'open'>> {
  const server = await servePages();
  const own = browserName === 'firefox' ? 'moz-extension' : 'chrome-extension';
  return {
    ...launched,
    address: server.address,
    serve: server.serve,
    inside: (path) => `${own}://${launched.id}/${path}`,
    open: async (address) => {
      const page = await launched.context.newPage();
      await page.goto(address);
      return page;
    },
    close: async () => {
      await launched.close();
      server.stop();
    },
  };
}

/**
 * Starts the browser without the extension, for parts of the extension that run alone in a page. One browser serves all
 * files of a worker.
 */
export function startPlainBrowser(): Promise<Browser> {
  return keepPlain(() =>
    browserName === 'firefox' ? launchPlainFirefox() : chromium.launch({ executablePath: findChromium() }),
  );
}

/**
 * Returns `test` for a feature that only one browser has, for a reason named in `only-in.ts`. The other browser skips
 * the test.
 */
export function onlyIn(browser: OneBrowser, _reason: keyof typeof whyOnlyIn): typeof test {
  return (browserName === browser ? test : test.skip) as typeof test;
}

type Launched = ExtensionBrowser &
  Pick<TestBrowser, 'inBackground' | 'sideWorld' | 'badge' | 'command' | 'checkSelection'>;

async function startChromium(language?: string): Promise<Launched> {
  if (!existsSync(builtExtension)) throw new Error('The extension is not built: run `npm run build` first.');
  const launched = await launchExtension({
    executable: findChromium(),
    headless: true,
    sealed: true,
    ...(language && { language }),
  });
  const inBackground = async <T, Given>(run: (given: Given) => T | Promise<T>, given?: Given): Promise<T> => {
    const isOurs = (one: { url(): string }): boolean => one.url().includes(launched.id);
    const worker =
      launched.context.serviceWorkers().find(isOurs) ??
      (await launched.context.waitForEvent('serviceworker', { predicate: isOurs }));
    return worker.evaluate(run as never, given) as Promise<T>;
  };
  return {
    ...launched,
    inBackground,
    sideWorld: openSideWorld,
    badge: (page) =>
      inBackground(async (url: string) => {
        const [tab] = (await chrome.tabs.query({})).filter((one) => one.url === url || one.active);
        return chrome.action.getBadgeText({ tabId: tab!.id! });
      }, page.url()),
    // Headless Chromium supports neither shortcuts nor the context menu for an extension. Both are dispatched to the
    // extension as Chromium would dispatch them.
    command: (name) =>
      inBackground(async (name: string) => {
        const [tab] = await chrome.tabs.query({ active: true, lastFocusedWindow: true });
        const heard = chrome.commands.onCommand as unknown as { dispatch(name: string, tab: object): void };
        heard.dispatch(name, tab!);
      }, name),
    checkSelection: () =>
      inBackground(async () => {
        const [tab] = await chrome.tabs.query({ active: true, lastFocusedWindow: true });
        const info = { menuItemId: 'check-selection', editable: false, pageUrl: '' };
        const heard = chrome.contextMenus.onClicked as unknown as {
          dispatch(info: object, tab: object): void;
        };
        heard.dispatch(info, tab!);
      }),
  };
}

/** Sets a command's shortcut and presses it in Firefox's window. */
async function pressShortcut(firefox: FirefoxBrowser, name: keyof typeof SHORTCUTS): Promise<void> {
  const command = { name, shortcut: `Alt+Shift+${SHORTCUTS[name]}` };
  await firefox.inBackground((command) => {
    type Commands = { update(command: object): Promise<void> };
    return (chrome.commands as unknown as Commands).update(command);
  }, command);
  await firefox.pressShortcut(SHORTCUTS[name]);
}
