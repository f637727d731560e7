import type { Page } from 'playwright-core';
import { launchFirefox } from '../e2e/firefox.ts';
import { waitFor } from '../e2e/wait-for.ts';
import {
  PATIENCE,
  readState,
  readTasks,
  type SweepBrowser,
  unsettle,
  type Visit,
  whenMarked,
} from './visit.ts';

type Firefox = Awaited<ReturnType<typeof launchFirefox>>;

/** Starts a Firefox with the network cut off. Its sidebar is read beside the page. */
export async function sweepFirefox(): Promise<SweepBrowser> {
  const firefox = await launchFirefox();
  // A page of the extension asks the visited pages what they have read, as the panel does.
  const asker = await firefox.context.newPage();
  await asker.goto(`moz-extension://${firefox.id}/privacy.html`);
  return { visit: (address) => visit(firefox, asker, address), close: firefox.close };
}

async function visit(firefox: Firefox, asker: Page, address: string): Promise<Visit> {
  const page = await firefox.context.newPage();
  const errors: string[] = [];
  // Firefox also reports missing fonts and pictures as page errors, but without a line of a script. Saved pages have
  // many of these errors.
  page.on('pageerror', ({ message, stack }) => {
    if (/\n\s+at /.test(stack ?? '')) errors.push(`page: ${message}`);
  });
  try {
    // Firefox waits for the frames of a page, which may never load. The text of the page is enough.
    await page.goto(address, { waitUntil: 'commit' });
    await page.waitForFunction(() => document.readyState !== 'loading');
    await page.evaluate(unsettle);
    const before = await page.evaluate(readState);
    await sidebarSays(firefox, false).catch(() => null);
    const marked = page.evaluate(whenMarked, { wanted: true, patience: PATIENCE });
    // A visit may end before the marks appear. Then nobody waits for `marked`.
    marked.catch(() => {});
    // Ignores earlier errors, which came from the page's own scripts.
    errors.length = 0;
    const pressed = Date.now();
    await firefox.press(page);
    const shown = await sidebarSays(firefox, true).catch(() => null);
    const marks = await marked;
    const during = await page.evaluate(readState);
    const read = await asker.evaluate(askFront, address);
    const says =
      shown?.says ??
      (await firefox.inSidebar((document) =>
        [...document.querySelectorAll('.note, .scope-part')].map((one) => one.textContent).join(' | '),
      ));
    const unmarked = page.evaluate(whenMarked, { wanted: false, patience: PATIENCE });
    unmarked.catch(() => {});
    await firefox.press(page);
    await unmarked;
    return {
      marks: marks && marks - pressed,
      figure: shown && shown.at - pressed,
      says,
      words: read?.words ?? [],
      scope: read?.scope ?? 'none',
      longestTask: await page.evaluate(readTasks),
      errors,
      states: [before, during, await page.evaluate(readState)],
    };
  } finally {
    await page.close();
  }
}

/** Waits until the sidebar shows a figure, or until it shows none. Returns the text of the figure and the time. */
function sidebarSays(firefox: Firefox, wanted: boolean): Promise<{ says: string; at: number }> {
  return waitFor(
    async () => {
      const says = await firefox
        .inSidebar((document) => document.querySelector('.reach-figure')?.textContent ?? null)
        .catch(() => null);
      if ((says !== null) !== wanted) throw new Error('The sidebar shows something else.');
      return { says: says ?? '', at: Date.now() };
    },
    { timeout: PATIENCE, interval: 20 },
  );
}

/** Asks the tab with this address what its page has read. Runs in a page of the extension. */
async function askFront(address: string): Promise<Pick<Visit, 'words' | 'scope'> | null> {
  const { tabs } = (globalThis as unknown as { browser: typeof chrome }).browser;
  for (const { id } of await tabs.query({})) {
    const question = { to: 'page', ask: 'words' };
    const reply = await tabs.sendMessage(id!, question, { frameId: 0 }).catch(() => null);
    const done = (reply as { done?: Pick<Visit, 'words' | 'scope'> & { url: string } } | null)?.done;
    if (done?.url === address) return done;
  }
  return null;
}
