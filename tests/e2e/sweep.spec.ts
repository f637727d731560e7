import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { isFailed } from '../sweep/score-visit.ts';
import { sweepChromium } from '../sweep/sweep-chromium.ts';
import { sweepFirefox } from '../sweep/sweep-firefox.ts';
import { sweepFolder } from '../sweep/sweep-folder.ts';
import { browserName } from './browser.ts';

// Outside source: saved pages of the real web that other projects keep as test fixtures (../shared/pages/index.tsv
// lists them).
const folder = fileURLToPath(new URL('../../../shared/pages', import.meta.url));
const own = fileURLToPath(new URL('../pages/web', import.meta.url));
if (!existsSync(folder)) console.log(`The saved pages are not swept: there is no folder ${folder}.`);

/** Returns every n-th page, so that each run has some pages of each kind. */
const some = (of: string, n: number): Set<string> =>
  new Set(
    readdirSync(of)
      .filter((file) => file.endsWith('.html'))
      .sort()
      .filter((_, i) => i % n === 0)
      .map((file) => file.replace(/\.html$/, '')),
  );

// `.ci/run` sweeps all pages after the tests.
const isSweptLater = process.env.SWEEPS === 'later';

test.skipIf(isSweptLater || !existsSync(folder))(
  'a dozen saved real web pages give figures, throw no errors, and are restored by the second press',
  { timeout: 180_000 },
  () => sweep(folder, 7),
);
test.skipIf(isSweptLater)(
  'our own pages in the style of the web give figures, throw no errors, and are restored',
  { timeout: 120_000 },
  () => sweep(own, 8),
);

async function sweep(of: string, n: number): Promise<void> {
  const wanted = some(of, n);
  const browser = await (browserName === 'firefox' ? sweepFirefox() : sweepChromium());
  try {
    const outcomes = await sweepFolder(of, browser, () => undefined, {
      isWanted: (page) => wanted.has(page),
    });
    expect(outcomes).toHaveLength(wanted.size);
    // Time limits apply only in the separate sweep, because a busy machine is slow.
    const failed = outcomes.filter((outcome) => isFailed(outcome, true));
    expect(failed.map(({ page, faults }) => `${page}: ${faults.join('; ')}`)).toEqual([]);
  } finally {
    await browser.close();
  }
}
