import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runAxe } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { openOwnPage, ownPages } from './own-pages.ts';

// The numbers in the test names are criteria of the Web Content Accessibility Guidelines (WCAG) 2.2, level AA.
let browser: TestBrowser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

const addresses = Object.keys(ownPages) as (keyof typeof ownPages)[];
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

describe.each(addresses)('the page %s', (address) => {
  // The page is opened once. Each test leaves the page in a state that the next test can use.
  let page: Page;
  beforeAll(async () => {
    page = await openOwnPage(browser, address);
  });
  afterAll(() => page?.close());

  test('moves nothing if the user wants less motion (2.3.3)', async () => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    const moving = await page.evaluate(() =>
      [...document.querySelectorAll('*')]
        .filter((one) => {
          const { transitionDuration, animationDuration } = getComputedStyle(one);
          return [transitionDuration, animationDuration].some((time) => Number.parseFloat(time) > 0);
        })
        .map((one) => one.outerHTML.slice(0, 80)),
    );
    expect(moving).toEqual([]);
  });

  test('has no axe faults, including target sizes (2.5.8), and has enough contrast in dark mode too', async () => {
    await page.emulateMedia({ colorScheme: 'light', reducedMotion: null });
    // Colours change gradually, and axe would measure a colour that is still changing.
    const settle = () =>
      page.evaluate(() => Promise.all(document.getAnimations().map(({ finished }) => finished)));
    await settle();
    const light = await runAxe(page, { tags: TAGS });
    expect(light.faults).toEqual([]);
    expect(Object.keys(light.passes).length).toBeGreaterThan(5);
    // Only the colours differ, so only contrast is checked. With forced colours, axe would still use the page's own
    // colours.
    await page.emulateMedia({ colorScheme: 'dark' });
    await settle();
    const dark = await runAxe(page, { rules: ['color-contrast'] });
    expect(dark.faults).toEqual([]);
    expect(Object.keys(dark.passes)).toEqual(['color-contrast']);
  });

  test('fits its window in a language that runs from right to left', async () => {
    await page.evaluate(() => document.documentElement.setAttribute('dir', 'rtl'));
    for (const width of [320, 1280]) {
      await page.setViewportSize({ width, height: 800 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
    await page.evaluate(() => document.documentElement.removeAttribute('dir'));
  });

  test('fits a window of 1280 px at 400 % (1.4.10) and with wider letter spacing (1.4.12)', async () => {
    await page.setViewportSize({ width: 320, height: 256 });
    const width = () => page.evaluate(() => document.documentElement.scrollWidth);
    expect(await width()).toBeLessThanOrEqual(320);
    // The page would refuse a style element from outside. It accepts a sheet made by its own script.
    await page.evaluate(() => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(
        '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }',
      );
      document.adoptedStyleSheets.push(sheet);
    });
    expect(await width()).toBeLessThanOrEqual(320);
  });
});
