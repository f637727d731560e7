import type { Frame } from 'playwright-core';
import { findChromium } from '../src/tools/find-browser.ts';
import { launchExtension } from '../src/tools/launch-extension.ts';
import { servePages } from '../tests/e2e/page-server.ts';
import { median } from './median.ts';

/** The longest time a card may take, in milliseconds. */
export const CARD_LIMIT = 150;
/** The same limit for a page whose thread runs at a sixth of the speed. */
export const SLOW_CARD_LIMIT = 200;

/**
 * Runs in the frame of the card. Notes the time at which the card is drawn in its place, on the clock that all pages
 * share.
 */
const NOTE_DRAWN = `if (location.pathname === '/card.html') {
  new MutationObserver((_, observer) => {
    if (!document.querySelector('.sheet')?.style.maxHeight) return;
    observer.disconnect();
    requestAnimationFrame(() => requestAnimationFrame(() => {
      globalThis.drawn = performance.timeOrigin + performance.now();
    }));
  }).observe(document, { subtree: true, childList: true, attributes: true });
}`;

/**
 * Measures the time from the click on a word, with Alt held, until its card is drawn in its place, in milliseconds.
 * Uses the built extension in a real Chromium, with a running background. The page's thread is slowed down by the
 * factor `slower`.
 */
export async function measureCardOpening(
  runs: number,
  slower = 1,
): Promise<{ median: number; least: number }> {
  const server = await servePages();
  const browser = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
  const page = await browser.context.newPage();
  const session = await browser.context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await page.addInitScript(NOTE_DRAWN);
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
    const drawn = await card.waitForFunction(() => (globalThis as { drawn?: number }).drawn);
    const painted = (await drawn.jsonValue())!;
    times.push(painted - (await page.evaluate(() => (window as unknown as { clicked: number }).clicked)));
    await page.keyboard.press('Escape');
    while (page.frames().includes(card)) await page.waitForEvent('framedetached');
  }
  await browser.close();
  server.stop();
  // The first time is left out, since the script that shows cards comes into the page with the first card.
  const warm = times.slice(1);
  return { median: median(warm), least: Math.min(...warm) };
}
