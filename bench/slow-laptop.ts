import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { CDPSession, Page } from 'playwright-core';
import { findChromium } from '../src/tools/find-browser.ts';
import { launchExtension } from '../src/tools/launch-extension.ts';
import { servePages } from '../tests/e2e/page-server.ts';
import { median } from './median.ts';
import { writePage } from './write-page.ts';

/** The factor by which a laptop that a school hands out is slower than this machine. */
export const SLOWER = 6;

/** Saved pages of the real web. They are not in the repository; our own pages in their style take their place. */
const SAVED = fileURLToPath(new URL('../../shared/pages', import.meta.url));
const OWN = fileURLToPath(new URL('../tests/pages/web', import.meta.url));

/** A page that is measured. */
interface SlowPage {
  readonly name: string;
  readonly html: string;
}

/** Times in milliseconds, in a browser at a sixth of the speed. */
export interface SlowFigures {
  readonly name: string;
  /** From the press of the button to the first marks. Null if no marked word is in view, as below a long menu. */
  readonly marked: number | null;
  /** From the press until all words are counted, as the panel asks for them. */
  readonly counted: number;
  /** The longest task of the page's thread from the press until the whole page is marked. 0 if no task took 50 ms. */
  readonly longest: number;
  /** Frames while the page is scrolled: before the press, and after the press when the page has been still for a while. */
  readonly plain: Frames;
  readonly shaded: Frames;
}

interface Frames {
  readonly median: number;
  /** The 95th percentile. */
  readonly high: number;
}

/** Returns pages of the given numbers of words, and the five longest saved pages. */
export function slowPages(sizes: readonly number[]): SlowPage[] {
  const folder = existsSync(SAVED) ? SAVED : OWN;
  const saved = readdirSync(folder)
    .filter((file) => file.endsWith('.html'))
    .sort((a, b) => statSync(join(folder, b)).size - statSync(join(folder, a)).size)
    .slice(0, 5);
  return [
    ...sizes.map((words) => ({ name: `${words.toLocaleString('en')} words`, html: writePage(words) })),
    ...saved.map((file) => ({ name: file, html: readFileSync(join(folder, file), 'utf8') })),
  ];
}

/** Shades and scrolls pages in a real Chromium that is slowed down. */
export async function measureSlowLaptop(pages: readonly SlowPage[]): Promise<SlowFigures[]> {
  const server = await servePages();
  const browser = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
  const figures: SlowFigures[] = [];
  for (const [i, { name, html }] of pages.entries()) {
    const page = await browser.context.newPage();
    await page.goto(server.serve(`${i}.html`, html), { waitUntil: 'domcontentloaded' });
    const session = await browser.context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    await rest(page, 1000);
    const plain = await scroll(page, session);
    await page.evaluate(() => scrollTo(0, 0));
    await rest(page, 500);
    await page.evaluate(() => {
      const tasks: number[] = [];
      Object.assign(window, { tasks });
      new PerformanceObserver((list) => tasks.push(...list.getEntries().map((one) => one.duration))).observe({
        entryTypes: ['longtask'],
      });
    });
    // The test tool puts a large script of its own into the page for the first such wait.
    await page.waitForFunction(() => true);
    const started = performance.now();
    await browser.press(page);
    const [first, counted] = await Promise.all([
      page
        .waitForFunction(() => CSS.highlights.size > 0, null, { polling: 16 })
        .then(() => performance.now() - started),
      countWords(browser).then(() => performance.now() - started),
    ]);
    await rest(page, 5000);
    const longest = await page.evaluate(() =>
      Math.max(0, ...(window as unknown as { tasks: number[] }).tasks),
    );
    const marked = (await hasMarksInView(page)) ? first : null;
    figures.push({ name, marked, counted, longest, plain, shaded: await scroll(page, session) });
    await page.close();
  }
  await browser.close();
  server.stop();
  return figures;
}

/** Returns whether a marked word is in view at the top of a page. */
function hasMarksInView(page: Page): Promise<boolean> {
  return page.evaluate(() => {
    const range = document.createRange();
    for (const marks of CSS.highlights.values())
      for (const { startContainer, startOffset, endContainer, endOffset } of marks) {
        range.setStart(startContainer, startOffset);
        range.setEnd(endContainer, endOffset);
        const { top, bottom } = range.getBoundingClientRect();
        if (bottom > 0 && top < innerHeight) return true;
      }
    return false;
  });
}

/** Asks the page in front for its words, as the panel does. A panel in a tab of its own would hide the page. */
async function countWords({ context }: Awaited<ReturnType<typeof launchExtension>>): Promise<void> {
  await context.serviceWorkers()[0]!.evaluate(async () => {
    const [tab] = await chrome.tabs.query({ active: true, lastFocusedWindow: true });
    // Nobody answers until the script has been put into the page.
    while (!(await chrome.tabs.sendMessage(tab!.id!, { to: 'page', ask: 'words' }).catch(() => null)))
      await new Promise((later) => setTimeout(later, 10));
  });
}

/** Waits for the given milliseconds, and then until the page is idle. */
async function rest(page: Page, milliseconds: number): Promise<void> {
  await page.evaluate(async (milliseconds) => {
    await new Promise((rested) => setTimeout(rested, milliseconds));
    for (let i = 0; i < 3; i++) await new Promise((rested) => requestIdleCallback(rested));
  }, milliseconds);
}

/** Scrolls a page from its top as a mouse wheel does, and measures the times of its frames. */
async function scroll(page: Page, session: CDPSession): Promise<Frames> {
  await page.evaluate(() => {
    const frames: number[] = [];
    Object.assign(window, { frames });
    scrollTo(0, 0);
    // `note` is a method, since the bundler names functions in constants with a helper that the page does not have.
    const clock = {
      last: performance.now(),
      note() {
        const now = performance.now();
        frames.push(now - clock.last);
        clock.last = now;
        requestAnimationFrame(() => clock.note());
      },
    };
    requestAnimationFrame(() => clock.note());
  });
  await session.send('Input.synthesizeScrollGesture', {
    x: 600,
    y: 450,
    yDistance: -9000,
    speed: 2000,
  });
  const frames = await page.evaluate(() =>
    (window as unknown as { frames: number[] }).frames.splice(0).slice(2),
  );
  const sorted = frames.toSorted((a, b) => a - b);
  return { median: median(frames), high: sorted[Math.floor(sorted.length * 0.95)] ?? 0 };
}
