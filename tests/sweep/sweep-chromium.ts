import type { CDPSession, Worker } from 'playwright-core';
import { findChromium } from '../../src/tools/find-browser.ts';
import { type ExtensionBrowser, launchExtension } from '../../src/tools/launch-extension.ts';
import { nextSidePanel, openSidePanel, type SidePanel } from './side-panel.ts';
import {
  noteTasks,
  PATIENCE,
  readState,
  readTasks,
  type SweepBrowser,
  unsettle,
  type Visit,
  whenMarked,
} from './visit.ts';

/** Starts a Chromium with the network cut off. Its real side panel is read beside the page. */
export async function sweepChromium(): Promise<SweepBrowser> {
  const launched = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
  const session = await launched.context.browser()!.newBrowserCDPSession();
  await session.send('Target.setDiscoverTargets', { discover: true });
  return {
    // The panel stays open beside the next page, or is opened anew.
    visit: async (address) => visit(launched, session, await openSidePanel(session), address),
    close: launched.close,
  };
}

async function visit(
  { context, press, id }: ExtensionBrowser,
  session: CDPSession,
  before: SidePanel | null,
  address: string,
): Promise<Visit> {
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(`page: ${error.message}`));
  const worker =
    context.serviceWorkers().find((one) => one.url().includes(id)) ??
    (await context.waitForEvent('serviceworker'));
  await noteFaults(worker);
  try {
    await page.goto(address, { waitUntil: 'domcontentloaded' });
    await page.evaluate(unsettle);
    await page.evaluate(noteTasks);
    const untouched = await page.evaluate(readState);
    await before?.evaluate(whenNoFigure);
    const opened = before ?? nextSidePanel(session, PATIENCE);
    const marked = page.evaluate(whenMarked, { wanted: true, patience: PATIENCE });
    // A visit may end before the marks appear. Then nobody waits for `marked`.
    marked.catch(() => {});
    // Ignores earlier errors, which came from the page's own scripts.
    errors.length = 0;
    const pressed = Date.now();
    await press(page);
    const panel = await opened;
    const figure = await panel.evaluate(whenFigure);
    const marks = await marked;
    const read = await panel.evaluate(askFront);
    const during = await page.evaluate(readState);
    const says = await panel.evaluate(
      () =>
        document.querySelector('.reach-figure')?.textContent ??
        [...document.querySelectorAll('.note, .scope-part')].map((one) => one.textContent).join(' | '),
    );
    const unmarked = page.evaluate(whenMarked, { wanted: false, patience: PATIENCE });
    unmarked.catch(() => {});
    await press(page);
    await unmarked;
    const after = await page.evaluate(readState);
    errors.push(...panel.errors);
    errors.push(
      ...(await worker.evaluate(() => (globalThis as { sweptFaults?: string[] }).sweptFaults ?? [])),
    );
    return {
      marks: marks && marks - pressed,
      figure: figure && figure - pressed,
      says,
      words: read?.words ?? [],
      scope: read?.scope ?? 'none',
      longestTask: await page.evaluate(readTasks),
      errors,
      states: [untouched, during, after],
    };
  } finally {
    await page.close();
  }
}

/** Returns the time in milliseconds when the panel shows a figure, or null if the panel shows none. Runs in the panel. */
async function whenFigure(): Promise<number | null> {
  const until = Date.now() + 10_000;
  while (!document.querySelector('.reach-figure')) {
    if (Date.now() > until) return null;
    await new Promise(requestAnimationFrame);
  }
  return Date.now();
}

/** Waits until the panel no longer shows the figure of the page before. Runs in the panel. */
async function whenNoFigure(): Promise<void> {
  while (document.querySelector('.reach-figure')) await new Promise(requestAnimationFrame);
}

/** Asks the page in front what it has read. Runs in the panel. */
async function askFront(): Promise<Pick<Visit, 'words' | 'scope'> | null> {
  const [tab] = await chrome.tabs.query({ active: true, currentWindow: true });
  const question = { to: 'page', ask: 'words' };
  const reply = await chrome.tabs.sendMessage(tab!.id!, question, { frameId: 0 }).catch(() => null);
  return (reply as { done?: Pick<Visit, 'words' | 'scope'> } | null)?.done ?? null;
}

/** Collects errors that the background throws from now on and nobody catches. */
function noteFaults(worker: Worker): Promise<void> {
  return worker.evaluate(() => {
    const holder = globalThis as { sweptFaults?: string[] };
    const isNew = !holder.sweptFaults;
    holder.sweptFaults = [];
    if (!isNew) return;
    addEventListener('error', ({ message }) => holder.sweptFaults!.push(`background: ${message}`));
    // The background logs here why it did not shade a page.
    const { info } = console;
    console.info = (...given: unknown[]) => {
      holder.sweptFaults!.push(`background: ${given.map(String).join(' ')}`);
      info(...given);
    };
    addEventListener('unhandledrejection', ({ reason }) =>
      holder.sweptFaults!.push(`background: ${String(reason)}`),
    );
  });
}
