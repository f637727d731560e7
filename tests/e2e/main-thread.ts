import type { CDPSession, Page } from 'playwright-core';

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly tdur?: number;
}

/** Runs code beside a page's own scripts, where nothing they have changed is seen, as the content script does. */
export interface SideWorld {
  readonly session: CDPSession;
  evaluate<T>(run: () => T | Promise<T>): Promise<T>;
}

/** A world of its own in a page; it is gone when the page is left. */
export async function openSideWorld(page: Page): Promise<SideWorld> {
  const session = await page.context().newCDPSession(page);
  const { frameTree } = await session.send('Page.getFrameTree');
  const { executionContextId } = await session.send('Page.createIsolatedWorld', {
    frameId: frameTree.frame.id,
    worldName: 'test',
  });
  return {
    session,
    async evaluate(run) {
      const { result, exceptionDetails } = await session.send('Runtime.evaluate', {
        expression: `(${run})()`,
        contextId: executionContextId,
        awaitPromise: true,
        returnByValue: true,
      });
      if (exceptionDetails) throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
      return result.value;
    },
  };
}

/**
 * The longest task of a page's main thread while something is done, in milliseconds of processor time: not the clock's, so that
 * whatever else the machine does is left out.
 */
export async function longestTask(page: Page, side: SideWorld, work: () => Promise<void>): Promise<number> {
  const browser = page.context().browser()!;
  await browser.startTracing(page, {
    categories: ['blink.user_timing', 'disabled-by-default-devtools.timeline'],
  });
  await side.evaluate(() => void performance.mark('task-watch'));
  await work();
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as {
    traceEvents: TraceEvent[];
  };
  const mark = traceEvents.find(({ name }) => name === 'task-watch');
  if (!mark) throw new Error('The trace does not show which thread is the page’s.');
  const tasks = traceEvents.filter(
    // Those before are the page's own first drawing.
    ({ name, pid, tid, ts }) => name === 'RunTask' && pid === mark.pid && tid === mark.tid && ts > mark.ts,
  );
  return Math.max(0, ...tasks.map(({ tdur = 0 }) => tdur / 1000));
}
