import { readFileSync } from 'node:fs';
import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { builtExtension } from '../../src/tools/launch-extension.ts';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';
import { whenMarked } from './marked-words.ts';

const story = readFileSync(new URL('../../public/story/index.html', import.meta.url), 'utf8');

/** The parts of the stored groups that these tests read. */
interface Stored {
  chosen: string;
  groups: Record<string, { names: string[]; alsoTaught: string[] }>;
}

let browser: TestBrowser;
/** Errors that any page reported. */
let said: string[];

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  await clearKept(browser);
  said = [];
});

function listen(page: Page): Page {
  page.on('pageerror', ({ message }) => said.push(message));
  page.on(
    'console',
    (message) =>
      message.type() === 'error' && !/favicon|404/.test(message.text()) && said.push(message.text()),
  );
  return page;
}

async function openOwn(path: string): Promise<Page> {
  const page = listen(await browser.context.newPage());
  await page.goto(browser.inside(`${path}`));
  return page;
}

async function openStory(name = 'story.html'): Promise<Page> {
  return listen(await browser.open(browser.serve(name, story)));
}

/** Counts the words that are not yet decodable, including the words of the next steps. */
const marks = (page: Page) =>
  page.evaluate(() => (CSS.highlights.get('wr-1')?.size ?? 0) + (CSS.highlights.get('wr-5')?.size ?? 0));
const shaded = (page: Page) =>
  page.waitForFunction(() => (CSS.highlights.get('wr-1')?.size ?? 0) > 0, null, { timeout: 20_000 });

/** Stops the background worker, as the browser may do at any time. */
async function stopBackground(): Promise<void> {
  const view = await browser.context.newPage();
  const session: CDPSession = await browser.context.newCDPSession(view);
  await session.send('ServiceWorker.enable');
  await session.send('ServiceWorker.stopAllWorkers');
  await view.close();
}

/**
 * Resolves once the extension's script runs in the page. Chromium makes the script's world some milliseconds earlier,
 * and a background that stops in between takes the script with it.
 */
async function runsIn(page: Page): Promise<void> {
  const session: CDPSession = await browser.context.newCDPSession(page);
  const made = new Promise<number>((resolve) => {
    session.on('Runtime.executionContextCreated', ({ context }) => {
      if (context.origin === `chrome-extension://${browser.id}`) resolve(context.id);
    });
  });
  await session.send('Runtime.enable');
  const contextId = await made;
  const expression = "globalThis[Symbol.for('wordreach')] !== undefined";
  const runs = () => session.send('Runtime.evaluate', { contextId, expression });
  await expect.poll(async () => (await runs()).result.value, { interval: 5 }).toBe(true);
}

test('stopping the background before it answers and while it answers loses nothing', async () => {
  const page = await openStory();
  await stopBackground();
  const running = runsIn(page);
  await browser.press(page);
  // Until the script runs in the page, a stop of the background loses the press, and the teacher must press the button
  // again.
  await running;
  await stopBackground();
  await shaded(page);
  const panel = await browser.openPanel(page);
  await panel.waitForSelector('.reach');
  const before = await marks(page);
  for (let n = 0; n < 5; n++) {
    await stopBackground();
    const option = panel.getByRole('listitem').getByRole('checkbox').first();
    await option.click();
    await expect.poll(() => marks(page), { timeout: 15_000 }).toBeLessThan(before);
    await stopBackground();
    await panel.getByRole('region', { name: 'Taught early' }).getByRole('checkbox').first().click();
    await expect.poll(() => marks(page), { timeout: 15_000 }).toBe(before);
  }
  expect(said).toEqual([]);
});

test('every change of a group is saved although the background is stopped repeatedly', async () => {
  const view = await openOwn('groups.html');
  const words = Array.from({ length: 6 }, (_, n) => `Otto${n}`);
  const ask = (word: string) =>
    view.evaluate((word) => {
      const answered = chrome.runtime
        .sendMessage({ to: 'background', ask: 'act', given: { do: 'name', word } })
        .then((reply) => Boolean(reply) && !('fault' in reply))
        .catch(() => false);
      // The browser may lose a message when the background stops. That message gets no answer, so the test gives up
      // after a while.
      const givenUp = new Promise<false>((resolve) => {
        AbortSignal.timeout(5000).addEventListener('abort', () => resolve(false));
      });
      return Promise.race([answered, givenUp]);
    }, word);
  for (const word of words) {
    // The message is sent while the background stops. If it gets no answer, it is sent again, as a teacher would do.
    const [first] = await Promise.all([ask(word), stopBackground()]);
    if (!first) await expect.poll(() => ask(word), { timeout: 15_000 }).toBe(true);
  }
  const kept = await view.evaluate(async () => {
    const { groups } = await chrome.storage.local.get<{ groups: Stored }>('groups');
    return groups.groups[groups.chosen]!.names.filter((name: string) => /^Otto\d/.test(name));
  });
  expect(new Set(kept)).toEqual(new Set(words));
});

test('a reloaded extension leaves no stale marks or errors, and shades at the next press', async () => {
  const page = await openStory();
  await browser.press(page);
  await shaded(page);
  const session = await browser.context.browser()!.newBrowserCDPSession();
  const loaded = browser.context.waitForEvent('serviceworker');
  await session.send('Extensions.loadUnpacked' as never, { path: builtExtension } as never);
  const background = await loaded;
  await expect.poll(() => background.evaluate(() => chrome.action.onClicked.hasListeners())).toBe(true);
  // The page changes and the pointer moves, as in normal use. The old shading then notices that the extension no longer
  // answers.
  await page.evaluate(() => document.querySelector('p')!.append(' A harpoon glistened.'));
  await page.mouse.move(200, 200);
  await expect.poll(() => page.evaluate(() => CSS.highlights.size), { timeout: 10_000 }).toBe(0);
  expect(await page.evaluate(() => document.adoptedStyleSheets.length)).toBe(0);
  await browser.press(page);
  await shaded(page);
  expect(said).toEqual([]);
});

test('a full storage is reported in a sentence, and stored data stays unchanged', async () => {
  const view = await openOwn('groups.html');
  await view.evaluate(async () => {
    const room = chrome.storage.local.QUOTA_BYTES - (await chrome.storage.local.getBytesInUse());
    await chrome.storage.local.set({ filler: 'x'.repeat(room - 200) });
  });
  const panelPage = await openStory();
  await browser.press(panelPage);
  await shaded(panelPage);
  const panel = await browser.openPanel(panelPage);
  listen(panel);
  await panel.waitForSelector('.reach');
  // The panel has figures once the page is read. The last marks may still be on their way.
  await whenMarked(panelPage);
  const before = await marks(panelPage);
  await panel.getByRole('listitem').getByRole('checkbox').first().click();
  await panel.getByText('the browser’s storage for Wordreach is full').waitFor();
  for (const colorScheme of ['light', 'dark'] as const) {
    await panel.emulateMedia({ colorScheme });
    expect(await axeFaults(panel, '.fault')).toEqual([]);
  }
  expect(await marks(panelPage)).toBe(before);
  expect(said).toEqual([]);
});

test('two windows that change one group at the same time keep both changes', async () => {
  const page = await openStory();
  await browser.press(page);
  await shaded(page);
  const [one, other] = [await browser.openPanel(page), await browser.openPanel(page)];
  await one.waitForSelector('.reach');
  await other.waitForSelector('.reach');
  const taught = () =>
    one.evaluate(async () => {
      const { groups } = await chrome.storage.local.get<{ groups?: Stored }>('groups');
      return groups ? groups.groups[groups.chosen]!.alsoTaught.length : 0;
    });
  const tick = (panel: Page, pattern: number) =>
    panel.evaluate((n) => document.querySelectorAll<HTMLElement>('.gaps input')[n]!.click(), pattern);
  const rows = async (panel: Page) => (await panel.locator('.gaps h3').allTextContents()).slice(0, 2).join();
  let before = '';
  for (let round = 1; round <= 8; round++) {
    // Both panels show the result of the last round.
    await expect
      .poll(async () => [await rows(one), await rows(other)])
      .toSatisfy(([mine, theirs]) => mine === theirs && mine !== before);
    before = await rows(one);
    await Promise.all([tick(one, 0), tick(other, 1)]);
    await expect.poll(taught).toBe(2 * round);
    // Ticked rows stay in the list until the pointer leaves the list.
    for (const panel of [one, other])
      await panel.evaluate(() => {
        for (const list of document.querySelectorAll('.gap-rows'))
          list.dispatchEvent(new PointerEvent('pointerleave'));
      });
  }
});

test('twelve pages shaded at once are all shaded, and closing some of them does not affect the others', async () => {
  const pages: Page[] = [];
  for (let n = 0; n < 12; n++) pages.push(await openStory(`story-${n}.html`));
  for (const [n, page] of pages.entries()) {
    await browser.press(page);
    if (n % 4 === 3) await page.close();
  }
  const open = pages.filter((page) => !page.isClosed());
  expect(open.length).toBe(9);
  const counts: number[] = [];
  for (const page of open) {
    await page.bringToFront();
    await shaded(page);
    counts.push(await marks(page));
  }
  expect(Math.min(...counts)).toBeGreaterThan(10);
  expect(said).toEqual([]);
});
