import { mkdirSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { startOwnBrowser } from '../e2e/browser.ts';
import { screens } from './screens.ts';

/**
 * Takes a picture of every screen, light and dark, narrow and wide, and saves it in `.output/pictures` for inspection.
 * The screens are in the language of the browser.
 * The arguments are the names of the screens to take. Without arguments, all screens are taken.
 */
const into = fileURLToPath(new URL('../../.output/pictures/', import.meta.url));
const wanted = process.argv.slice(2);
rmSync(into, { recursive: true, force: true });
mkdirSync(into, { recursive: true });
const browser = await startOwnBrowser();
try {
  for (const { name, widths, open } of screens) {
    if (wanted.length > 0 && !wanted.includes(name)) continue;
    const page = await open(browser);
    // A scrollbar would make the page narrower than its picture.
    await page.evaluate(() => document.documentElement.style.setProperty('scrollbar-width', 'none'));
    for (const width of widths) {
      await page.setViewportSize({ width, height: 900 });
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
        const path = `${into}${name}-${width}-${colorScheme}.png`;
        await page.screenshot({ path, fullPage: name !== 'story' });
        process.stdout.write(`${path}\n`);
      }
    }
    for (const other of browser.context.pages().slice(1)) await other.close();
  }
} finally {
  await browser.close();
}
