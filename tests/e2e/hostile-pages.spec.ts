import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { startBrowser, type TestBrowser } from './browser.ts';
import { hostilePages } from './hostile-pages.ts';
import type { SideWorld } from './main-thread.ts';

type Side = Pick<SideWorld, 'evaluate'>;

let browser: TestBrowser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
afterEach(async () => {
  for (const page of browser.context.pages().slice(1)) await page.close();
});

/**
 * Returns a summary of the page's nodes as text. The card's element is the only element that the extension may ever add
 * to the page.
 */
const html = (side: Side) =>
  side.evaluate(() => {
    const walk = document.createTreeWalker(document, NodeFilter.SHOW_ALL);
    let hash = 0;
    let nodes = 0;
    while (walk.nextNode()) {
      const node = walk.currentNode;
      const said = `${node.nodeName}|${node.nodeValue?.length}|${node instanceof Element ? [...node.attributes].map(({ name, value }) => name + value).join() : ''}`;
      for (let i = 0; i < said.length; i++) hash = (Math.imul(hash, 31) + said.charCodeAt(i)) | 0;
      nodes++;
    }
    return `${nodes} nodes, ${hash}`;
  });

/** Returns the answer of the content script in the active tab, or null while there is no content script. */
async function askInFront(): Promise<{ words: [string, number][]; takenAway: boolean } | null> {
  return browser.inBackground(async () => {
    const [tab] = await chrome.tabs.query({ active: true, lastFocusedWindow: true });
    return chrome.tabs
      .sendMessage(tab!.id!, { to: 'page', ask: 'words' })
      .then((reply) => reply?.done ?? null)
      .catch(() => null);
  });
}

/** Waits until a page has been shaded and its counts no longer change. */
async function settled(side: Side): Promise<string[]> {
  let words: string[] = [];
  let before = -1;
  for (const until = Date.now() + 40_000; Date.now() < until; ) {
    const answer = await askInFront();
    const count = answer?.words.reduce((sum, [, n]) => sum + n, 0) ?? 0;
    words = answer?.words.map(([key]) => key) ?? [];
    if (count > 0 && count === before) break;
    before = count;
    await side.evaluate(() => new Promise((rested) => requestIdleCallback(rested, { timeout: 300 })));
  }
  return words;
}

async function openPage(html: string): Promise<{ page: Page; side: Side; said: string[] }> {
  const address = browser.serve(
    'hostile.html',
    `<!doctype html><meta charset="utf-8"><title>Quay</title><body>${html}`,
  );
  const page = await browser.context.newPage();
  const said: string[] = [];
  page.on('pageerror', ({ message }) => said.push(message));
  page.on('console', (message) => message.type() === 'error' && said.push(message.text()));
  await page.goto(address);
  return { page, side: await browser.sideWorld(page), said };
}

test.each(hostilePages)(
  'the extension works and leaves nothing behind on a page with $what',
  async ({ html: body, finds = 'lighthouse', keepsMarks = true, what }) => {
    const { page, side, said } = await openPage(body);
    const grows = what.includes('growing');
    for (let n = 0; n < 3; n++)
      await side.evaluate(() => new Promise((rested) => requestIdleCallback(rested, { timeout: 500 })));
    const before = await html(side);
    const saidBefore = said.length;
    await browser.press(page);
    expect(await settled(side)).toContain(finds);
    if (keepsMarks) {
      await expect
        .poll(() => side.evaluate(() => CSS.highlights.get('wr-1')?.size ?? 0), { timeout: 10_000 })
        .toBeGreaterThan(0);
    }
    if (!grows) expect(await html(side)).toBe(before);

    await browser.press(page);
    await expect.poll(askInFront, { timeout: 10_000 }).toBeNull();
    await side.evaluate(() => new Promise((rested) => requestIdleCallback(rested, { timeout: 300 })));
    if (!grows) expect(await html(side)).toBe(before);
    expect(said.slice(saidBefore)).toEqual([]);
  },
);
