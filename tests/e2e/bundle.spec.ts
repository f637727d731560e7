import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Report, WordKey } from '../../src/analyze/types.ts';
import type { Shown } from '../../src/contract/page-contract.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { bundleKeys, standingsBySource, UNLISTED } from './bundle-words.ts';

interface Asked {
  readonly ask: string;
  readonly given: object;
}

/** Sends a request to the background. Runs in a page of the extension. */
async function ask({ ask, given }: Asked): Promise<unknown> {
  const { runtime } = ((globalThis as { browser?: typeof chrome }).browser ?? chrome) as typeof chrome;
  return runtime.sendMessage({ to: 'background', ask, given });
}

let browser: TestBrowser;
let page: Page;

beforeAll(async () => {
  browser = await startBrowser();
  page = await browser.open(browser.inside('privacy.html'));
});
afterAll(() => browser?.close());

const AT_ONCE = 4000;

describe('the built background', () => {
  test('gives listed, unlisted and garbled words the standings that the sources give', async () => {
    const keys = bundleKeys();
    expect(keys.length).toBeGreaterThan(3000);
    const expected = standingsBySource(keys);
    const differing: string[] = [];
    for (let at = 0; at < keys.length; at += AT_ONCE) {
      const portion: WordKey[] = keys.slice(at, at + AT_ONCE);
      const reply = await page.evaluate(ask, { ask: 'judge', given: { keys: portion, homographs: [] } });
      const { standings: shown } = (reply as { done: { standings: Shown[] } }).done;
      // Words of the next steps have a separate mark, but are not yet decodable either.
      const standings = shown.map((one) => (one === 'soon' ? 'beyond' : one));
      for (const [i, key] of portion.entries())
        if (standings[i] !== expected[at + i]) differing.push(`${key}: ${standings[i]}`);
    }
    expect(differing).toEqual([]);
  });

  test('judges each accented word without an error', async () => {
    const words = UNLISTED.map((word) => [word, 1]);
    const reply = await page.evaluate(ask, { ask: 'report', given: { words, skipped: 0 } });
    const { faults, words: judged } = (reply as { done: Report }).done;
    expect(faults).toEqual([]);
    expect(judged.length).toBe(new Set(UNLISTED.map((word) => word.toLowerCase())).size);
  });
});
