import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { startBrowser, type TestBrowser } from './browser.ts';

let browser: TestBrowser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(() => browser.inBackground(() => chrome.storage.local.set({ 'private-marks': true })));
afterEach(async () => {
  await browser.inBackground(() => chrome.storage.local.clear());
  for (const page of browser.context.pages().slice(1)) await page.close();
});

const story = `<!doctype html><meta charset="utf-8"><title>Quay</title><body style="margin: 40px; font: 20px/1.6 serif">
  <p><b>lighthouse</b> and <b>cat</b></p><div style="height: 3000px"></div><p id="end">A lighthouse.</p>`;

const open = (html = story): Promise<Page> => browser.open(browser.serve('private.html', html));

/** Returns a screenshot of one of the page's words. */
async function picture(page: Page, word = 0): Promise<Buffer> {
  const box = (await page.locator('b').nth(word).boundingBox())!;
  return page.screenshot({ clip: { ...box, height: box.height + 4 } });
}

/** Returns as text everything that a script of the page can find out about marks and words. */
const asked = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const words = [...document.querySelectorAll('b')];
    const seen = await new Promise<string>((resolve) => {
      if (!('isVisible' in IntersectionObserverEntry.prototype)) resolve('');
      const options = { trackVisibility: true, delay: 100 } as IntersectionObserverInit;
      new IntersectionObserver(
        (entries) =>
          resolve(entries.map((entry) => (entry as unknown as { isVisible: boolean }).isVisible).join()),
        options,
      ).observe(words[0]!);
    });
    const other = await new Promise<string>((resolve) => {
      if (!('isVisible' in IntersectionObserverEntry.prototype)) resolve('');
      const options = { trackVisibility: true, delay: 100 } as IntersectionObserverInit;
      new IntersectionObserver(
        (entries) =>
          resolve(entries.map((entry) => (entry as unknown as { isVisible: boolean }).isVisible).join()),
        options,
      ).observe(words[1]!);
    });
    const over = words.map((word) => {
      const { left, top, width, height } = word.getBoundingClientRect();
      return document.elementsFromPoint(left + width / 2, top + height / 2).map(({ tagName }) => tagName);
    });
    return JSON.stringify({
      marks: CSS.highlights.size,
      sheets: document.adoptedStyleSheets.length,
      isSame: seen === other,
      over,
      width: document.documentElement.scrollWidth,
      height: document.documentElement.scrollHeight,
    });
  });

test('private marks are drawn, and the page cannot see them', async () => {
  const page = await open();
  const [before, cat, askedBefore] = [await picture(page), await picture(page, 1), await asked(page)];
  await browser.press(page);
  await expect.poll(async () => (await picture(page)).equals(before)).toBe(false);
  expect((await picture(page, 1)).equals(cat)).toBe(true);
  expect(await asked(page)).toBe(askedBefore);
  expect(await page.evaluate(() => document.documentElement.lastElementChild!.outerHTML)).toBe('<div></div>');

  await page.evaluate(() => scrollTo(0, 40));
  await page.evaluate(() => scrollTo(0, 0));
  await expect.poll(async () => (await picture(page)).equals(before)).toBe(false);

  await browser.press(page);
  await expect.poll(async () => (await picture(page)).equals(before)).toBe(true);
  expect(await page.evaluate(() => document.documentElement.children.length)).toBe(2);
});

test('a word covered by another element gets no private mark', async () => {
  const page = await open(
    story.replace(
      '</p>',
      '</p><i style="position: absolute; left: 0; top: 0; width: 400px; height: 120px; background: gold"></i>',
    ),
  );
  const before = await picture(page);
  await browser.press(page);
  await page.waitForFunction(() => document.documentElement.children.length === 3);
  await page.evaluate(() => new Promise((next) => requestAnimationFrame(() => requestAnimationFrame(next))));
  expect((await picture(page)).equals(before)).toBe(true);
});

test('marks become private when the page keeps removing them', async () => {
  await browser.inBackground(() => chrome.storage.local.clear());
  const page = await open();
  const before = await picture(page);
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  await page.evaluate(() => setInterval(() => CSS.highlights.clear(), 100));
  await expect
    .poll(
      async () => {
        await page.mouse.move(500, 300);
        await page.mouse.move(510, 300);
        return page.evaluate(() => document.documentElement.children.length);
      },
      { timeout: 15_000, interval: 600 },
    )
    .toBe(3);
  await expect.poll(async () => (await picture(page)).equals(before)).toBe(false);
  expect(await page.evaluate(() => CSS.highlights.size)).toBe(0);
});

test('private marks are chosen in the panel, and apply to a page that is already shaded', async () => {
  await browser.inBackground(() => chrome.storage.local.clear());
  const page = await open();
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  const panel = await browser.openPanel(page);
  await panel.getByLabel('Private marks: the page cannot see them').check();
  await page.bringToFront();
  await page.waitForFunction(
    () => CSS.highlights.size === 0 && document.documentElement.children.length === 3,
  );
});
