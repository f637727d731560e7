import { findChromium } from '../src/tools/find-browser.ts';
import { launchExtension } from '../src/tools/launch-extension.ts';
import { hostilePages } from '../tests/e2e/hostile-pages.ts';
import { longestTask, openSideWorld } from '../tests/e2e/main-thread.ts';
import { servePages } from '../tests/e2e/page-server.ts';

/** The longest task that we may cause on a hostile page, in milliseconds of processor time. */
export const HOSTILE_LIMIT = 200;

/**
 * Measures the longest task that the built extension causes on each hostile page, from the press to its end, in
 * milliseconds.
 */
export async function measureHostilePages(): Promise<{ what: string; longest: number }[]> {
  const server = await servePages();
  const browser = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
  const found: { what: string; longest: number }[] = [];
  for (const { what, html } of hostilePages) {
    const page = await browser.context.newPage();
    await page.goto(
      server.serve('hostile.html', `<!doctype html><meta charset="utf-8"><title>Quay</title><body>${html}`),
    );
    const side = await openSideWorld(page);
    const rest = () =>
      side.evaluate(() => new Promise((rested) => requestIdleCallback(rested, { timeout: 2000 })));
    for (let n = 0; n < 3; n++) await rest();
    const longest = await longestTask(page, side, async () => {
      await browser.press(page);
      for (let n = 0; n < 5; n++) await rest();
      await browser.press(page);
      for (let n = 0; n < 3; n++) await rest();
    });
    found.push({ what, longest });
    await page.close();
  }
  await browser.close();
  server.stop();
  return found;
}
