import type { Page } from 'playwright-core';

/**
 * Processor time of a page's main thread, in milliseconds. Clock time is not used, so that other work of the machine is
 * left out.
 */
export interface ThreadTime {
  /** Time for scripts, and for the browser's calculations that the scripts need. */
  readonly work: number;
  /** Time for frames drawn meanwhile. */
  readonly drawing: number;
}

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
}

const CATEGORIES = ['cc', 'blink.user_timing', 'disabled-by-default-devtools.timeline'];

/**
 * Does work in a page the given number of times, and returns the time of each run. `prepare` runs before each run and
 * is not counted.
 */
export async function measureThread(
  page: Page,
  runs: number,
  work: () => Promise<void>,
  prepare: () => Promise<void> = async () => undefined,
): Promise<ThreadTime[]> {
  const browser = page.context().browser()!;
  const times: ThreadTime[] = [];
  for (let run = 0; run < runs; run++) {
    await page.evaluate(prepare);
    await browser.startTracing(page, { categories: CATEGORIES });
    await page.evaluate(() => void performance.mark('bench start'));
    await page.evaluate(work);
    await page.evaluate(() => void performance.mark('bench end'));
    const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as {
      traceEvents: TraceEvent[];
    };
    const start = traceEvents.find(({ name }) => name === 'bench start')!;
    const end = traceEvents.find(({ name }) => name === 'bench end')!;
    const sum = (wanted: string): number =>
      traceEvents
        .filter(
          ({ name, pid, tid, ts }) =>
            name === wanted && pid === start.pid && tid === start.tid && ts > start.ts && ts < end.ts,
        )
        .reduce((total, { tdur = 0 }) => total + tdur / 1000, 0);
    const drawing = sum('ProxyMain::BeginMainFrame');
    times.push({ work: sum('RunTask') - drawing, drawing });
  }
  return times;
}
