import type { CDPSession, Page } from 'playwright-core';

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly tdur?: number;
}

/**
 * Runs code in a page but apart from the page's own scripts, as the content script does. The code does not see anything
 * that those scripts have changed.
 */
export interface SideWorld {
  readonly session: CDPSession;
  evaluate<T>(run: () => T | Promise<T>): Promise<T>;
}

/** Opens an isolated world in a page. It is gone when the browser leaves the page. */
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
 * Returns the longest task of a page's main thread during some work, in milliseconds of processor time. Clock time
 * would include other work of the machine.
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
    // Tasks before the mark belong to the page's own first drawing.
    ({ name, pid, tid, ts }) => name === 'RunTask' && pid === mark.pid && tid === mark.tid && ts > mark.ts,
  );
  return Math.max(0, ...tasks.map(({ tdur = 0 }) => tdur / 1000));
}
