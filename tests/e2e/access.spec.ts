import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeFor } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { openOwnPage, ownPages } from './own-pages.ts';

// Web Content Accessibility Guidelines (WCAG) 2.2, level AA; the numbers are those of its criteria.
let browser: TestBrowser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  for (const open of browser.context.pages().slice(1)) await open.close();
});

const addresses = Object.keys(ownPages) as (keyof typeof ownPages)[];
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

describe.each(addresses)('%s', (address) => {
  test('has no fault for axe, target sizes too (2.5.8), in light, dark and forced colours', async () => {
    const page = await openOwnPage(browser, address);
    for (const media of [
      { colorScheme: 'light' },
      { colorScheme: 'dark' },
      { forcedColors: 'active' },
    ] as const) {
      await page.emulateMedia(media);
      // Colours fade into each other, and axe would find them half-way.
      await page.evaluate(() => Promise.all(document.getAnimations().map(({ finished }) => finished)));
      const axe = axeFor(page).withTags(TAGS);
      // The browser chooses forced colours; axe reckons with those of the page.
      if ('forcedColors' in media) axe.disableRules(['color-contrast']);
      const { violations, passes } = await axe.analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual(
        [],
      );
      expect(passes.length).toBeGreaterThan(5);
    }
  });

  test('fits a window of 1280 px at 400 % (1.4.10) and with more room between letters (1.4.12)', async () => {
    const page = await openOwnPage(browser, address);
    await page.setViewportSize({ width: 320, height: 256 });
    const width = () => page.evaluate(() => document.documentElement.scrollWidth);
    expect(await width()).toBeLessThanOrEqual(320);
    await page
      .addStyleTag({
        content:
          '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }',
      })
      .catch(async () => {
        // The page takes no style from elsewhere; a sheet made by its own script it does.
        await page.evaluate(() => {
          const sheet = new CSSStyleSheet();
          sheet.replaceSync(
            '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }',
          );
          document.adoptedStyleSheets.push(sheet);
        });
      });
    expect(await width()).toBeLessThanOrEqual(320);
  });

  test('runs the other way round where a language does', async () => {
    const page = await openOwnPage(browser, address);
    await page.evaluate(() => document.documentElement.setAttribute('dir', 'rtl'));
    for (const width of [320, 1280]) {
      await page.setViewportSize({ width, height: 800 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
  });

  test('moves nothing for those who do not want it (2.3.3)', async () => {
    const page = await openOwnPage(browser, address);
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
});
