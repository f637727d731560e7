import { findChromium } from '../src/tools/find-browser.ts';
import { launchExtension } from '../src/tools/launch-extension.ts';
import { median } from './median.ts';

/** Milliseconds, medians. */
export interface BackgroundFigures {
  /** Time until the answer to a question about a word of the table, when the browser has stopped the background. */
  readonly coldStart: number;
  /** Time until the answer to the same question about a word that nobody listed. */
  readonly guessed: number;
  /** Time until the answer to a question, when the background is running. */
  readonly warm: number;
  /** Time to read only the table and the model from the package. */
  readonly bareFetch: number;
  /** Time to read only the table. */
  readonly bareTable: number;
}

/**
 * Stops the background and asks it a question from a page of the extension, the given number of times, in a real
 * Chromium.
 */
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
  const read = (files: readonly string[]): Promise<number> =>
    page.evaluate(async (wanted) => {
      const start = performance.now();
      await Promise.all(wanted.map(async (file) => (await fetch(`/data/${file}`)).arrayBuffer()));
      return performance.now() - start;
    }, files);
  const stop = (): Promise<unknown> => devtools.send('ServiceWorker.stopAllWorkers');
  const times: BackgroundFigures[] = [];
  for (let run = 0; run <= runs; run++) {
    const bareFetch = await read(['lexicon.bin', 'guess.bin']);
    const bareTable = await read(['lexicon.bin']);
    await stop();
    const coldStart = await ask(['tide']);
    const warm = await ask(['tide']);
    await stop();
    const guessed = await ask(['zoggle']);
    times.push({ bareFetch, bareTable, coldStart, warm, guessed });
  }
  await browser.close();
  const middle = (of: keyof BackgroundFigures): number => median(times.slice(1).map((one) => one[of]));
  return {
    coldStart: middle('coldStart'),
    guessed: middle('guessed'),
    warm: middle('warm'),
    bareFetch: middle('bareFetch'),
    bareTable: middle('bareTable'),
  };
}
