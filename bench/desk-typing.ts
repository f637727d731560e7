import type { Page } from 'playwright-core';
import { findChromium } from '../src/tools/find-browser.ts';
import { launchExtension } from '../src/tools/launch-extension.ts';
import { longText } from './long-text.ts';

/** In milliseconds. */
export interface TypingFigures {
  /** Time from a key until the text is changed and its marks are in the document. */
  readonly key: Spread;
  /**
   * Time from a key until the frame with it is drawn. Up to 17 ms of this are the wait for the display's next beat, which
   * even an empty page has.
   */
  readonly drawn: Spread;
  /**
   * The part of this time that the main thread spends on script, style and layout. Other work of the machine does not
   * count.
   */
  readonly work: Spread;
  /**
   * The longest task while the keys are typed, and the longest task when the long text is pasted. 0 if no task took 50
   * ms.
   */
  readonly typing: number;
  readonly pasting: number;
  /** Time from the long paste to its first shaded word, and to the reach of the whole text. */
  readonly shaded: number;
  readonly counted: number;
}

/** The median and the 95th percentile. */
export interface Spread {
  readonly median: number;
  readonly high: number;
}

const KEYS = 200;
const WORK = ['ScriptDuration', 'LayoutDuration', 'RecalcStyleDuration'];

/**
 * Types 200 keys into the middle of a passage of 5,000 words on the desk, in a real Chromium. Then pastes 50,000 words.
 * The desk's thread is slowed down by the factor `slower`.
 */
export async function measureDeskTyping(slower = 1): Promise<TypingFigures> {
  const browser = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
  const desk = await browser.context.newPage();
  await desk.goto(`chrome-extension://${browser.id}/desk.html`);
  await watchTasks(desk);
  await desk.getByLabel('Text', { exact: true }).fill(longText(5000));
  await desk.getByRole('button', { name: 'Make a passage' }).click();
  await desk.waitForSelector('.reach-figure');
  const field = desk.getByRole('textbox', { name: /^Text for/ });
  await field.press('Control+Home');
  for (let page = 0; page < 12; page++) await desk.keyboard.press('PageDown');
  await desk.keyboard.press('End');
  const devtools = await browser.context.newCDPSession(desk);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await rest(desk);
  await takeTasks(desk);
  await desk.evaluate(() => {
    const holder = window as unknown as { keys: number[]; drawn: number[] };
    holder.keys = [];
    holder.drawn = [];
    let began = 0;
    addEventListener('keydown', () => (began = performance.now()), { capture: true });
    // The editor changes and decorates the text in a microtask, which was asked for before this one. After a key,
    // Chromium holds messages and timers back until a frame is drawn.
    const after = new MessageChannel();
    after.port1.onmessage = () => holder.drawn.push(performance.now() - began);
    addEventListener(
      'input',
      () => {
        queueMicrotask(() => holder.keys.push(performance.now() - began));
        after.port2.postMessage(null);
      },
      { capture: true },
    );
  });
  const written = ' The ferry left the quay at ten, and Wilma ran along the wall.'.repeat(4).slice(0, KEYS);
  await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
  const work: number[] = [];
  const sumWork = async (): Promise<number> => {
    const { metrics } = await devtools.send('Performance.getMetrics');
    return metrics.reduce((sum, { name, value }) => sum + (WORK.includes(name) ? value * 1000 : 0), 0);
  };
  for (const letter of written) {
    const before = await sumWork();
    await desk.keyboard.type(letter);
    work.push((await sumWork()) - before);
  }
  await rest(desk);
  const { keys, drawn } = await desk.evaluate(() => {
    const { keys, drawn } = window as unknown as { keys: number[]; drawn: number[] };
    return { keys, drawn };
  });
  if (keys.length < KEYS) throw new Error(`Only ${keys.length} of ${KEYS} keys were seen.`);
  const typing = Math.max(0, ...(await takeTasks(desk)));

  // The first wait compiles 330 kB of Playwright's own script in the page.
  await desk.waitForFunction(() => true);
  await rest(desk);
  await takeTasks(desk);
  const { shaded, counted } = await paste(desk, longText(50_000));
  await rest(desk);
  const pasting = Math.max(0, ...(await takeTasks(desk)));
  await browser.close();
  return { key: spread(keys), drawn: spread(drawn), work: spread(work), typing, pasting, shaded, counted };
}

function spread(times: readonly number[]): Spread {
  const sorted = [...times].sort((a, b) => a - b);
  return { median: sorted[Math.floor(times.length / 2)]!, high: sorted[Math.floor(times.length * 0.95)]! };
}

async function paste(desk: Page, text: string): Promise<{ shaded: number; counted: number }> {
  await desk.getByRole('textbox', { name: /^Text for/ }).press('Control+End');
  await desk.evaluate((text) => {
    const data = new DataTransfer();
    data.setData('text/plain', `\n${text}`);
    (window as unknown as { began: number }).began = performance.now();
    document
      .querySelector('.cm-content')!
      .dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
  }, text);
  const shaded = await desk.waitForFunction(
    () =>
      document.querySelector('.cm-line:last-child .desk-beyond') !== null &&
      performance.now() - (window as unknown as { began: number }).began,
  );
  const counted = await desk.waitForFunction(
    () =>
      Number(/of ([\d,]+) words/.exec(document.body.textContent ?? '')?.[1]?.replaceAll(',', '')) > 40_000 &&
      performance.now() - (window as unknown as { began: number }).began,
  );
  return { shaded: (await shaded.jsonValue()) || 0, counted: (await counted.jsonValue()) || 0 };
}

async function watchTasks(page: Page): Promise<void> {
  await page.evaluate(() => {
    const holder = window as unknown as { tasks: number[] };
    holder.tasks = [];
    new PerformanceObserver((list) =>
      holder.tasks.push(...list.getEntries().map(({ duration }) => duration)),
    ).observe({ entryTypes: ['longtask'] });
  });
}

function takeTasks(page: Page): Promise<number[]> {
  return page.evaluate(() => (window as unknown as { tasks: number[] }).tasks.splice(0));
}

async function rest(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (let i = 0; i < 5; i++) await new Promise((rested) => requestIdleCallback(rested));
  });
}
