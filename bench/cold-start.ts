import { findChromium } from '../src/tools/find-browser.ts';
import { launchExtension } from '../src/tools/launch-extension.ts';
import { median } from './median.ts';

/** Milliseconds, medians. */
export interface BackgroundFigures {
  /** From a question to a background the browser has stopped until its answer. */
  readonly coldStart: number;
  /** A question to one that runs. */
  readonly warm: number;
  /** Reading the same files from the package, and nothing else. */
  readonly bareFetch: number;
}

/** Stops the background and asks it, so many times, from a page of the extension; in a real Chromium. */
export async function measureBackground(runs: number): Promise<BackgroundFigures> {
  const browser = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
  const page = await browser.context.newPage();
  await page.goto(`chrome-extension://${browser.id}/groups.html`);
  const devtools = await browser.context.newCDPSession(page);
  await devtools.send('ServiceWorker.enable');
  const ask = (keys: readonly string[]): Promise<number> =>
    page.evaluate(async (asked) => {
      const start = performance.now();
      await chrome.runtime.sendMessage({
        to: 'background',
        ask: 'judge',
        given: { keys: asked, homographs: [] },
      });
      return performance.now() - start;
    }, keys);
  const times: { cold: number; warm: number; bare: number }[] = [];
  for (let run = 0; run <= runs; run++) {
    const bare = await page.evaluate(async () => {
      const start = performance.now();
      await Promise.all(
        ['lexicon.bin', 'guess.bin'].map(async (file) => (await fetch(`/data/${file}`)).arrayBuffer()),
      );
      return performance.now() - start;
    });
    await devtools.send('ServiceWorker.stopAllWorkers');
    times.push({ bare, cold: await ask(['tide']), warm: await ask(['tide']) });
  }
  await browser.close();
  const rest = times.slice(1);
  return {
    coldStart: median(rest.map(({ cold }) => cold)),
    warm: median(rest.map(({ warm }) => warm)),
    bareFetch: median(rest.map(({ bare }) => bare)),
  };
}
