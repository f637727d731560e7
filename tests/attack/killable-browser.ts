import { readlinkSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type BrowserContext, chromium } from 'playwright-core';
import { findChromium, findFirefox } from '../../src/tools/find-browser.ts';
import { builtExtension } from '../../src/tools/launch-extension.ts';
import { browserName } from '../e2e/browser.ts';
import { builtForFirefox, launchingFirefox } from '../e2e/firefox.ts';
import { startByPlaywright } from '../e2e/firefox-protocol.ts';

/** A browser with the built extension, in a profile that is kept after the browser ends. */
export interface KillableBrowser {
  readonly context: BrowserContext;
  /** Returns the address of a page of the extension. */
  inside(path: string): string;
  /**
   * Kills the browser's own process at once (SIGKILL), as in a power failure. No part of the browser can shut down
   * properly.
   */
  kill(): Promise<void>;
}

/** The address of the add-on. Firefox gives an add-on a new address at each install, unless it already has an address. */
const ADDRESS = '8f2d1c7a-5b3e-4c69-9d10-6a7b2e4f8c35';

/** Starts the browser of this run on a profile, which is new or left behind by a kill. */
export async function startKillable(profile: string): Promise<KillableBrowser> {
  const { context, origin } = await (browserName === 'firefox' ? startFirefox : startChromium)(profile);
  // Chromium and Firefox store the id of the process that uses the profile in a link with this name.
  const lock = join(profile, browserName === 'firefox' ? 'lock' : 'SingletonLock');
  return {
    context,
    inside: (path) => `${origin}/${path}`,
    async kill() {
      const gone = new Promise<void>((resolve) => context.once('close', () => resolve()));
      process.kill(Number(/\d+$/.exec(readlinkSync(lock))![0]), 'SIGKILL');
      await gone;
      rmSync(lock, { force: true });
    },
  };
}

async function startChromium(profile: string): Promise<{ context: BrowserContext; origin: string }> {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    headless: false,
    ignoreDefaultArgs: ['--disable-extensions'],
    args: [
      '--headless=new',
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--enable-unsafe-extension-debugging',
      '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost',
    ],
  });
  const session = await context.browser()!.newBrowserCDPSession();
  const { id } = (await session.send(
    'Extensions.loadUnpacked' as never,
    { path: builtExtension } as never,
  )) as unknown as { id: string };
  return { context, origin: `chrome-extension://${id}` };
}

async function startFirefox(profile: string): Promise<{ context: BrowserContext; origin: string }> {
  const { firefoxUserPrefs, ...launching } = launchingFirefox();
  const { started: context, ask } = await startByPlaywright((firefox) =>
    firefox.launchPersistentContext(profile, {
      ...launching,
      executablePath: findFirefox(),
      firefoxUserPrefs: {
        ...firefoxUserPrefs,
        'extensions.webextensions.uuids': JSON.stringify({ 'wordreach@wordreach.example': ADDRESS }),
        // After several crashes Firefox would ask whether to start without add-ons.
        'toolkit.startup.max_resumed_crashes': -1,
        'browser.sessionstore.resume_from_crash': false,
      },
    }),
  );
  await ask('webExtension.install', { extensionData: { type: 'path', path: builtForFirefox } });
  return { context, origin: `moz-extension://${ADDRESS}` };
}
