import { describe, expect, test } from 'vitest';
import type { Report, Standing, WordKey } from '../../src/analyze/types.ts';
import { startBrowser } from './browser.ts';
import { bundleKeys, standingsBySource, UNLISTED } from './bundle-words.ts';
import { startFirefox } from './firefox.ts';

/** Asks the background of the built extension from one of its own pages. */
type AskBackground = (ask: string, given: object) => Promise<unknown>;

interface Asked {
  readonly ask: string;
  readonly given: object;
}

/** Runs in a page of the extension. */
async function ask({ ask, given }: Asked): Promise<unknown> {
  const { runtime } = ((globalThis as { browser?: typeof chrome }).browser ?? chrome) as typeof chrome;
  return runtime.sendMessage({ to: 'background', ask, given });
}

async function inChromium(work: (ask: AskBackground) => Promise<void>): Promise<void> {
  const browser = await startBrowser();
  try {
    const page = await browser.open(`chrome-extension://${browser.id}/privacy.html`);
    await work((name, given) => page.evaluate(ask, { ask: name, given }));
  } finally {
    await browser.close();
  }
}

async function inFirefox(work: (ask: AskBackground) => Promise<void>): Promise<void> {
  const firefox = await startFirefox();
  try {
    const page = await firefox.open(firefox.inside('privacy.html'));
    await work((name, given) => page.evaluate(ask, { ask: name, given }));
  } finally {
    await firefox.close();
  }
}

const AT_ONCE = 4000;

describe.each([
  ['Chromium', inChromium],
  ['Firefox', inFirefox],
] as const)('the built background in %s', (_name, inBrowser) => {
  test('judges words that no list has, words of all lists, and words cut from broken texts as the sources do', async () => {
    const keys = bundleKeys();
    expect(keys.length).toBeGreaterThan(3000);
    const expected = standingsBySource(keys);
    await inBrowser(async (ask) => {
      const differing: string[] = [];
      for (let at = 0; at < keys.length; at += AT_ONCE) {
        const portion: WordKey[] = keys.slice(at, at + AT_ONCE);
        const reply = await ask('judge', { keys: portion, homographs: [] });
        const { standings } = (reply as { done: { standings: Standing[] } }).done;
        for (const [i, key] of portion.entries())
          if (standings[i] !== expected[at + i]) differing.push(`${key}: ${standings[i]}`);
      }
      expect(differing).toEqual([]);

      const words = UNLISTED.map((word) => [word, 1]);
      const report = (await ask('report', { words, skipped: 0 })) as { done: Report };
      expect(report.done.faults).toEqual([]);
      expect(report.done.words.length).toBe(new Set(UNLISTED.map((word) => word.toLowerCase())).size);
    });
  });
});
