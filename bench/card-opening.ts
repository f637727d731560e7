import type { Frame } from 'playwright-core';
import { findChromium } from '../src/tools/find-browser.ts';
import { launchExtension } from '../src/tools/launch-extension.ts';
import { servePages } from '../tests/e2e/page-server.ts';
import { median } from './median.ts';

/** The longest a card may take, in milliseconds. */
export const CARD_LIMIT = 150;

/**
 * From the click on a word, Alt held, until the first text of its card is painted, in milliseconds: the built extension in a real Chromium, with
 * a background that runs. The paint is the frame's own (Paint Timing: first-contentful-paint), on the clock that all pages share.
 */
export async function measureCardOpening(runs: number): Promise<{ median: number; least: number }> {
  const server = await servePages();
  const browser = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
  const page = await browser.context.newPage();
  await page.goto(
    server.serve(
      'card.html',
      `<!doctype html><meta charset="utf-8"><title>Quay</title><body style="margin: 40px; font: 20px/1.6 serif">
       <p>The <b>lighthouse</b> keeper was hoping.`,
    ),
  );
  await page.evaluate(() => {
    addEventListener(
      'click',
      (event) => Object.assign(window, { clicked: performance.timeOrigin + event.timeStamp }),
      { capture: true },
    );
  });
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  const times: number[] = [];
  for (let run = 0; run <= runs; run++) {
    await page.locator('b').click({ modifiers: ['Alt'] });
    const isCard = (frame: Frame): boolean => frame.url().includes('/card.html#');
    const card =
      page.frames().find(isCard) ?? (await page.waitForEvent('framenavigated', { predicate: isCard }));
    const painted = await card.evaluate(
      () =>
        new Promise<number>((resolve) => {
          new PerformanceObserver((list) => {
            const first = list.getEntriesByName('first-contentful-paint')[0];
            if (first) resolve(performance.timeOrigin + first.startTime);
          }).observe({ type: 'paint', buffered: true });
        }),
    );
    times.push(painted - (await page.evaluate(() => (window as unknown as { clicked: number }).clicked)));
    await page.keyboard.press('Escape');
    while (page.frames().includes(card)) await page.waitForEvent('framedetached');
  }
  await browser.close();
  server.stop();
  // What shows cards comes into the page with the first.
  const warm = times.slice(1);
  return { median: median(warm), least: Math.min(...warm) };
}
