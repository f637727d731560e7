import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { CDPSession, Page, Worker } from 'playwright-core';
import { findChromium } from '../src/tools/find-browser.ts';
import { launchExtension } from '../src/tools/launch-extension.ts';
import { heapOfPage, heapOfWorker } from './heap-of.ts';

/** The amount of use: about an hour of a teacher's day, without the pauses. */
const VISITS = Number(process.env.VISITS ?? 500);
const CHANGES = Number(process.env.CHANGES ?? 5000);
/** The number of pages that are open and shaded at once. */
const PAGES = Number(process.env.PAGES ?? 50);
/** The first share of the use, which is for warming up: tables are loaded, and words are remembered. */
const WARM = 0.2;

/**
 * Uses the extension for a long time in a real Chromium, and prints how much memory remains in use. Page and background
 * are measured after visits to pages, and again after changes of the group while the page is shaded. Each measurement
 * follows garbage collection. At the end, many pages are shaded at once.
 */
const story = readFileSync(new URL('../public/story/index.html', import.meta.url), 'utf8');
const server = createServer((_request, response) =>
  response.setHeader('content-type', 'text/html; charset=utf-8').end(story),
);
await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
const browser = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
const worker = browser.context.serviceWorkers()[0]!;

const control = await browser.context.browser()!.newBrowserCDPSession();
const page = await browser.context.newPage();
const session = await browser.context.newCDPSession(page);
await page.goto(address);
await shade(page);

const visits = await watchGrowth(VISITS, async (n) => {
  await page.goto(`${address}/${n}`);
  await shade(page);
});
print('page visits', VISITS, visits);
const changes = await watchGrowth(CHANGES, async (n) => {
  await changeGroup(worker, n);
  if (n % 20 === 0) await page.waitForFunction(() => (CSS.highlights.get('wr-1')?.size ?? 0) > 0);
});
print('changes of the group', CHANGES, changes);
await shadeAtOnce(PAGES);
await browser.close();
server.close();

/** Shades many pages at once, and closes every tenth page meanwhile. Fails unless all other pages end up shaded. */
async function shadeAtOnce(count: number): Promise<void> {
  const pages: Page[] = [];
  for (let n = 0; n < count; n++) {
    const page = await browser.context.newPage();
    await page.goto(`${address}/at-once-${n}`);
    pages.push(page);
  }
  for (const [n, page] of pages.entries()) {
    await browser.press(page);
    if (n % 10 === 9) await page.close();
  }
  const open = pages.filter((page) => !page.isClosed());
  for (const page of open) {
    await page.bringToFront();
    await page.waitForFunction(() => (CSS.highlights.get('wr-1')?.size ?? 0) > 10);
  }
  console.log(`${open.length} of ${count} pages shaded at once stayed open, all of them are shaded`);
}

async function shade(page: Page): Promise<void> {
  await browser.press(page);
  await page.waitForFunction(() => (CSS.highlights.get('wr-1')?.size ?? 0) > 0);
}

/** Moves the group one step on, and after its last step back to the first. */
async function changeGroup(worker: Worker, n: number): Promise<void> {
  await worker.evaluate(
    async (step) => {
      const { groups = null } = await chrome.storage.local.get<{
        groups?: { chosen: string; groups: object };
      }>('groups');
      const group = {
        name: 'Herons',
        sequence: 'steady-steps',
        step,
        alsoTaught: [],
        notYet: [],
        bySight: [],
        names: [],
      };
      await chrome.storage.local.set({
        groups: { version: 1, ...groups, chosen: 'herons', groups: { herons: group } },
      });
    },
    (n % 40) + 1,
  );
}

interface Memory {
  readonly page: number;
  readonly nodes: number;
  readonly background: number;
}

async function watchGrowth(times: number, work: (n: number) => Promise<void>): Promise<[Memory, Memory]> {
  const warm = Math.ceil(times * WARM);
  for (let n = 0; n < warm; n++) await work(n);
  const early = await measure(session);
  for (let n = warm; n < times; n++) await work(n);
  return [early, await measure(session)];
}

async function measure(session: CDPSession): Promise<Memory> {
  const page = await heapOfPage(session);
  const { nodes } = await session.send('Memory.getDOMCounters');
  return { page, nodes, background: await heapOfWorker(control, worker.url()) };
}

function print(what: string, times: number, [early, late]: [Memory, Memory]): void {
  const mb = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;
  process.stdout.write(
    `${times} ${what}: page ${mb(early.page)} -> ${mb(late.page)}, nodes ${early.nodes} -> ${late.nodes}, background ${mb(early.background)} -> ${mb(late.background)}\n`,
  );
}
