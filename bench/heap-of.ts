import type { CDPSession } from 'playwright-core';

interface HeapUsage {
  readonly usedSize: number;
  readonly embedderHeapUsedSize?: number;
  readonly backingStorageSize?: number;
}

const bytesOf = ({ usedSize, embedderHeapUsedSize = 0, backingStorageSize = 0 }: HeapUsage): number =>
  usedSize + embedderHeapUsedSize + backingStorageSize;

/**
 * Returns the bytes that a page's renderer holds after garbage collection: the heap of its scripts, the browser's own
 * data for the scripts, and buffers.
 */
export async function heapOfPage(session: CDPSession): Promise<number> {
  await session.send('HeapProfiler.enable');
  for (let n = 0; n < 3; n++) await session.send('HeapProfiler.collectGarbage');
  return bytesOf((await session.send('Runtime.getHeapUsage')) as HeapUsage);
}

/**
 * Returns the same figure for a service worker, by its address. A service worker is no page, so the browser's own
 * session is used to ask.
 */
export async function heapOfWorker(browser: CDPSession, address: string): Promise<number> {
  const { targetInfos } = await browser.send('Target.getTargets');
  const target = targetInfos.find(({ type, url }) => type === 'service_worker' && url === address)!;
  const { sessionId } = await browser.send('Target.attachToTarget', {
    targetId: target.targetId,
    flatten: false,
  });
  let id = 0;
  const ask = (method: string): Promise<HeapUsage> => {
    const mine = ++id;
    return new Promise((resolve) => {
      const hear = (event: { sessionId: string; message: string }): void => {
        const answer = JSON.parse(event.message) as { id: number; result: HeapUsage };
        if (event.sessionId !== sessionId || answer.id !== mine) return;
        browser.off('Target.receivedMessageFromTarget', hear);
        resolve(answer.result);
      };
      browser.on('Target.receivedMessageFromTarget', hear);
      const message = JSON.stringify({ id: mine, method });
      void browser.send('Target.sendMessageToTarget', { sessionId, message });
    });
  };
  for (let n = 0; n < 3; n++) await ask('HeapProfiler.collectGarbage');
  const bytes = bytesOf(await ask('Runtime.getHeapUsage'));
  await browser.send('Target.detachFromTarget', { sessionId });
  return bytes;
}
