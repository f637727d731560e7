import type { Page } from 'playwright-core';

/** Milliseconds of processor time of a page's main thread: not the clock's, so that whatever else the machine does is left out. */
export interface ThreadTime {
  /** Scripts, and what the browser has to find out for them. */
  readonly work: number;
  /** Frames drawn meanwhile. */
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
 * Does something in a page so many times and says what each took. `prepare` runs before each and is not counted.
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
