import { existsSync, readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, chromium, type Page } from 'playwright-core';

const root = fileURLToPath(new URL('../..', import.meta.url));
const extension = join(root, '.output/chrome-mv3');
const TYPES: Readonly<Record<string, string>> = { '.html': 'text/html; charset=utf-8', '.svg': 'image/svg+xml', '.css': 'text/css' };

/** A real Chromium with the built extension, and a server for the test pages. */
export interface TestBrowser {
  readonly context: BrowserContext;
  readonly id: string;
  /** Address of a file in tests/pages, or of a page given as text. */
  address(page: string): string;
  /** Serves a page that is made by the test. */
  serve(name: string, html: string): string;
  open(address: string): Promise<Page>;
  /** Presses the toolbar button for a page, as a user does: it grants activeTab. */
  press(page: Page): Promise<void>;
  /** Opens the side panel as a tab, bound to the given page. */
  openPanel(page: Page): Promise<Page>;
  close(): Promise<void>;
}

/** Where Chromium is: the variable CHROMIUM, or Debian's place. */
export function chromiumPath(): string {
  const path = process.env.CHROMIUM ?? '/usr/bin/chromium';
  if (!existsSync(path)) throw new Error(`There is no Chromium at ${path}: install Debian's chromium, or set CHROMIUM.`);
  return path;
}

export async function startBrowser(): Promise<TestBrowser> {
  if (!existsSync(extension)) throw new Error('The extension is not built: run `npm run build` first.');
  const profile = await mkdtemp(join(tmpdir(), 'wordreach-'));
  const made = new Map<string, string>();
  const server = await startServer(made);
  const base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: chromiumPath(),
    headless: false,
    ignoreDefaultArgs: ['--disable-extensions'],
    viewport: { width: 1200, height: 900 },
    args: [
      '--headless=new',
      '--no-sandbox',
      `--disable-extensions-except=${extension}`,
      `--load-extension=${extension}`,
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--disable-default-apps',
      '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost',
    ],
  });
  const worker = context.serviceWorkers()[0] ?? (await context.waitForEvent('serviceworker'));
  const id = new URL(worker.url()).host;

  return {
    context,
    id,
    address: (page) => `${base}/${page}`,
    serve: (name, html) => {
      made.set(`/${name}`, html);
      return `${base}/${name}`;
    },
    open: async (address) => {
      const page = await context.newPage();
      await page.goto(address);
      return page;
    },
    press: (page) => pressButton(context, page, id),
    openPanel: async (page) => {
      const tab = await tabId(context, page);
      const panel = await context.newPage();
      await panel.goto(`chrome-extension://${id}/sidepanel.html?tab=${tab}`);
      return panel;
    },
    close: async () => {
      await context.close();
      server.close();
      await rm(profile, { recursive: true, force: true });
    },
  };
}

/** Chromium's own test command for a click on the toolbar button; it works on a tab, not on the page inside it. */
async function pressButton(context: BrowserContext, page: Page, id: string): Promise<void> {
  const session = await context.browser()!.newBrowserCDPSession();
  await page.bringToFront();
  const { targetInfos } = await session.send('Target.getTargets', {
    filter: [{ type: 'tab', exclude: false }, { exclude: true }],
  });
  const target = targetInfos.find(({ url }) => url === page.url());
  if (!target) throw new Error(`No tab shows ${page.url()}.`);
  await session.send('Extensions.triggerAction' as never, { id, targetId: target.targetId } as never);
  await session.detach();
}

/** The browser's number of a tab, found by bringing it to the front. */
async function tabId(context: BrowserContext, page: Page): Promise<number> {
  await page.bringToFront();
  const worker = context.serviceWorkers()[0] ?? (await context.waitForEvent('serviceworker'));
  const id = await worker.evaluate(async () => (await chrome.tabs.query({ active: true, lastFocusedWindow: true }))[0]?.id);
  if (id === undefined) throw new Error('The browser has no tab in front.');
  return id;
}

function startServer(made: ReadonlyMap<string, string>): Promise<Server> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    const given = made.get(path);
    const file = join(root, 'tests/pages', path);
    if (given === undefined && (path.includes('..') || !existsSync(file))) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'text/html; charset=utf-8' });
    response.end(given ?? readFileSync(file));
  });
  return new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(server)));
}
