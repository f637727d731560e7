import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, type CDPSession, chromium, type Page, type Worker } from 'playwright-core';
import { InputError } from '../cli/run-command.ts';

/** The extension for Chromium as built by `npm run build`. `OUTPUT` names another folder, for two builds side by side. */
export const builtExtension = join(
  fileURLToPath(new URL('../../', import.meta.url)),
  process.env.OUTPUT ?? '.output',
  'chrome-mv3',
);

/** A browser with the built extension in its own profile. The profile is deleted when the browser is closed. */
export interface ExtensionBrowser {
  readonly context: BrowserContext;
  readonly id: string;
  /**
   * Presses the toolbar button for a page, as a user does. The button opens the panel and lets the extension read the
   * page.
   */
  press(page: Page): Promise<void>;
  /** Opens the side panel's page in a tab, bound to the given page. */
  openPanel(page: Page): Promise<Page>;
  close(): Promise<void>;
}

/**
 * Starts a Chromium with the extension. `headless` is for machines without a display. With `sealed`, the browser is
 * offline except for this machine.
 */
export async function launchExtension(options: {
  readonly executable: string;
  readonly headless: boolean;
  readonly sealed: boolean;
  /** The language of the browser itself (`es`). Without a value, the language of the system. */
  readonly language?: string;
}): Promise<ExtensionBrowser> {
  const profile = await mkdtemp(join(tmpdir(), 'wordreach-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: options.executable,
    headless: false,
    // Playwright switches extensions and the back/forward cache off. Users' browsers have both, so they stay on here.
    ignoreDefaultArgs: ['--disable-extensions', '--disable-back-forward-cache'],
    ...(options.language && {
      env: { ...process.env, LANGUAGE: options.language } as Record<string, string>,
    }),
    viewport: options.headless ? { width: 1200, height: 900 } : null,
    args: [
      ...(options.headless ? ['--headless=new'] : []),
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      ...(options.language ? [`--lang=${options.language}`, `--accept-lang=${options.language}`] : []),
      '--enable-unsafe-extension-debugging',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--disable-default-apps',
      ...(options.sealed
        ? ['--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost']
        : []),
    ],
  });
  const session = await context.browser()!.newBrowserCDPSession();
  const close = async (): Promise<void> => {
    await context.close();
    await rm(profile, { recursive: true, force: true });
  };
  const id = await loadExtension(context, session).catch(async (error: unknown) => {
    await close();
    throw error;
  });
  return {
    context,
    id,
    press: (page) => pressButton(session, page, id),
    openPanel: async (page) => {
      const tab = await tabNumber(context, page);
      const panel = await context.newPage();
      await panel.goto(`chrome-extension://${id}/sidepanel.html?tab=${tab}`);
      return panel;
    },
    close,
  };
}

/**
 * Loads the extension by the debugging protocol, since Chrome 137 and later (not Chromium) ignores `--load-extension`.
 * Returns the id of the extension.
 */
async function loadExtension(context: BrowserContext, session: CDPSession): Promise<string> {
  const welcome = waitForWelcome(context);
  const { id } = (await session
    .send('Extensions.loadUnpacked' as never, { path: builtExtension } as never)
    .catch((error: Error) => {
      throw new InputError(
        `This browser does not load the extension from here (${error.message}). Load ${builtExtension} by hand, or set CHROMIUM to another browser.`,
      );
    })) as unknown as { id: string };
  const isOurs = (worker: Worker): boolean => worker.url().includes(id);
  const worker =
    context.serviceWorkers().find(isOurs) ??
    (await context.waitForEvent('serviceworker', { predicate: isOurs }));
  // The worker answers only after the background has run. An earlier click would have no listener.
  if (!(await worker.evaluate(() => chrome.action.onClicked.hasListeners())))
    throw new Error('The background hears no clicks.');
  await (await welcome).close();
  return id;
}

/** Waits for the page that opens in front after installation. Without the wait, the page could open at any moment. */
function waitForWelcome(context: BrowserContext): Promise<Page> {
  return new Promise((resolve) => {
    const look = (page: Page): void => {
      const isIt = page.waitForURL(/\/welcome\.html$/).then(() => resolve(page));
      // Another page may be closed before it opens that address.
      isIt.catch(() => undefined);
    };
    context.on('page', look);
  });
}

/**
 * Clicks the toolbar button by Chromium's own test command. The command needs a tab as its target, not the page inside
 * the tab.
 */
async function pressButton(session: CDPSession, page: Page, id: string): Promise<void> {
  await page.bringToFront();
  const { targetInfos } = await session.send('Target.getTargets', {
    filter: [{ type: 'tab', exclude: false }, { exclude: true }],
  });
  const target = targetInfos.find(({ url }) => url === page.url());
  if (!target) throw new Error(`No tab shows ${page.url()}.`);
  await session.send('Extensions.triggerAction' as never, { id, targetId: target.targetId } as never);
}

/** Returns the browser's id of a tab, found by bringing the tab to the front. */
async function tabNumber(context: BrowserContext, page: Page): Promise<number> {
  await page.bringToFront();
  const worker = context.serviceWorkers()[0] ?? (await context.waitForEvent('serviceworker'));
  const id = await worker.evaluate(
    async () => (await chrome.tabs.query({ active: true, lastFocusedWindow: true }))[0]?.id,
  );
  if (id === undefined) throw new Error('The browser has no tab in front.');
  return id;
}
