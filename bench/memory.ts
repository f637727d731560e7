import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { findChromium } from '../src/tools/find-browser.ts';
import { launchExtension } from '../src/tools/launch-extension.ts';
import { heapOfPage, heapOfWorker } from './heap-of.ts';
import { untilRead } from './until-read.ts';
import { writePage } from './write-page.ts';

/** Bytes. */
export interface MemoryFigures {
  /** Memory of a background that has answered for a page, above a background without any code. */
  readonly background: number;
  /** Memory of a page of 10,000 words with its marks, above the same page without marks. */
  readonly tab: number;
  /** The same memory for a book of 1,000,000 words. */
  readonly book: number;
  /** The additional memory that the same tab holds after 100 pages, compared with 20 pages. */
  readonly growth: number;
}

/** Measures the memory of the extension in a real Chromium. */
export async function measureMemory(): Promise<MemoryFigures> {
  let html = writePage(10_000);
  const server = createServer((_request, response) =>
    response.setHeader('content-type', 'text/html; charset=utf-8').end(html),
  );
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const browser = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
  const control = await browser.context.browser()!.newBrowserCDPSession();
  const page = await browser.context.newPage();
  const session = await browser.context.newCDPSession(page);
  const shade = async (): Promise<void> => {
    await browser.press(page);
    await page.waitForFunction(() => (CSS.highlights.get('wr-1')?.size ?? 0) > 0);
  };
  await page.goto(address);
  const plain = await heapOfPage(session);
  // Stays in the same page, since the browser keeps a page that was left in case somebody comes back.
  await shade();
  // Wait until the whole page is read. The background is then asked for the last words.
  await page.waitForTimeout(2000);
  const tab = (await heapOfPage(session)) - plain;
  const background = await heapOfWorker(control, browser.context.serviceWorkers()[0]!.url());
  html = writePage(1_000_000);
  await page.goto(`${address}/book`);
  const plainBook = await heapOfPage(session);
  await shade();
  await untilRead(page, browser.context.serviceWorkers()[0]!);
  const book = (await heapOfPage(session)) - plainBook;
  html = writePage(1000);
  let after20 = 0;
  for (let n = 1; n <= 100; n++) {
    await page.goto(`${address}/${n}`);
    await shade();
    if (n === 20) after20 = await heapOfPage(session);
  }
  const growth = (await heapOfPage(session)) - after20;
  await browser.close();
  server.close();
  return { background: background - (await heapOfEmpty()), tab, book, growth };
}

/** Returns the memory of a background without any code of its own. */
async function heapOfEmpty(): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'empty-extension-'));
  const manifest = {
    manifest_version: 3,
    name: 'Empty',
    version: '1',
    background: { service_worker: 'empty.js' },
  };
  writeFileSync(join(folder, 'manifest.json'), JSON.stringify(manifest));
  writeFileSync(join(folder, 'empty.js'), '');
  const context = await chromium.launchPersistentContext(join(folder, 'profile'), {
    executablePath: findChromium(),
    headless: false,
    ignoreDefaultArgs: ['--disable-extensions'],
    args: [
      '--headless=new',
      '--enable-unsafe-extension-debugging',
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    ],
  });
  try {
    const control = await context.browser()!.newBrowserCDPSession();
    const started = context.waitForEvent('serviceworker');
    await control.send('Extensions.loadUnpacked' as never, { path: folder } as never);
    return await heapOfWorker(control, (await started).url());
  } finally {
    await context.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
