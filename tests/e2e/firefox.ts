import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { findFirefox } from '../../src/tools/find-browser.ts';
import type { ExtensionBrowser } from '../../src/tools/launch-extension.ts';
import { type Ask, callIn, findWindow, startByPlaywright } from './firefox-protocol.ts';
import { createFirefoxWindow, type FirefoxWindow } from './firefox-window.ts';
import type { SideWorld } from './main-thread.ts';

/** The folder to which `npm run build:firefox` writes the extension. `OUTPUT` names another folder, as for Chromium. */
export const builtForFirefox = join(
  fileURLToPath(new URL('../../', import.meta.url)),
  process.env.OUTPUT ?? '.output',
  'firefox-mv2',
);
/** Settings that let Firefox reach only this computer. All other addresses go to a proxy that does not exist. */
const SEALED = {
  'network.proxy.type': 1,
  'network.proxy.http': '127.0.0.1',
  'network.proxy.http_port': 9,
  'network.proxy.ssl': '127.0.0.1',
  'network.proxy.ssl_port': 9,
  'network.proxy.no_proxies_on': '127.0.0.1, localhost',
  'network.proxy.allow_hijacking_localhost': false,
};

/** A real Firefox without a visible window, in a profile of its own, with the built extension as a temporary add-on. */
export interface FirefoxBrowser extends ExtensionBrowser, Omit<FirefoxWindow, 'press' | 'whenRunning'> {
  /** Runs code separately from a page's own scripts; see `SideWorld`. */
  sideWorld(page: Page): Promise<Pick<SideWorld, 'evaluate'>>;
}

/** Returns the options with which the tests start Firefox. */
export const launchingFirefox = () => ({
  channel: 'moz-firefox',
  executablePath: findFirefox(),
  headless: true,
  args: ['--remote-allow-system-access', '--width=1200', '--height=900'],
  firefoxUserPrefs: SEALED,
});

/**
 * Starts a Firefox with the extension, whose tabs are Playwright pages. `language` is the language of the browser
 * itself (`es`).
 */
export async function launchFirefox(language?: string): Promise<FirefoxBrowser> {
  if (!existsSync(builtForFirefox))
    throw new Error('The extension is not built for Firefox: run `npm run build:firefox` first.');
  const profile = await mkdtemp(join(tmpdir(), 'wordreach-'));
  const { started: context, ask } = await startByPlaywright((firefox) =>
    firefox.launchPersistentContext(profile, {
      ...launchingFirefox(),
      viewport: { width: 1200, height: 900 },
    }),
  );
  const close = async (): Promise<void> => {
    await context.close();
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    if (language) await speak(ask, language);
    return { ...(await prepare(context, ask)), close };
  } catch (error) {
    await close();
    throw error;
  }
}

/** Starts a Firefox without the extension, for tests of the parts of the extension that run alone in a page. */
export async function launchPlainFirefox(): Promise<Browser> {
  const { started } = await startByPlaywright((firefox) => firefox.launch(launchingFirefox()));
  return started;
}

declare const Services: { locale: { availableLocales: string[]; requestedLocales: string[] } };

/**
 * Sets the language of Firefox. Firefox itself needs a language pack for its texts. Extensions bring their own texts,
 * so they need only the language's name.
 */
async function speak(ask: Ask, language: string): Promise<void> {
  const set = (language: string): void => {
    Services.locale.availableLocales = [language, 'en-US'];
    Services.locale.requestedLocales = [language];
  };
  await callIn(ask, await findWindow(ask), String(set), language);
}

async function prepare(context: BrowserContext, ask: Ask): Promise<Omit<FirefoxBrowser, 'close'>> {
  const extensionData = { type: 'path', path: builtForFirefox };
  const { extension } = await ask<{ extension: string }>('webExtension.install', { extensionData });
  const { press, whenRunning, ...window } = await createFirefoxWindow(ask, extension);
  const id = await whenRunning();
  return {
    ...window,
    context,
    id,
    press: async (page) => {
      await page.bringToFront();
      await press();
    },
    sideWorld: async (page) => {
      const { contexts } = await ask<{ contexts: { context: string; url: string }[] }>(
        'browsingContext.getTree',
        { maxDepth: 0 },
      );
      const shown = contexts.find(({ url }) => url === page.url());
      if (!shown) throw new Error(`No tab shows ${page.url()}.`);
      return {
        evaluate: (run) => callIn(ask, { context: shown.context, sandbox: 'test' }, String(run), null),
      };
    },
    openPanel: async (page) => {
      await page.bringToFront();
      const tab = await window.inBackground(async () => {
        const [tab] = await chrome.tabs.query({ active: true, lastFocusedWindow: true });
        return tab!.id;
      });
      const panel = await context.newPage();
      await panel.goto(`moz-extension://${id}/sidepanel.html?tab=${tab}`);
      return panel;
    },
  };
}
