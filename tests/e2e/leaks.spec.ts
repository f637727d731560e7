import type { BrowserContext, CDPSession } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startPlainBrowser } from './browser.ts';
import { openOverlayPage } from './overlay-page.ts';

let context: BrowserContext;
beforeAll(async () => {
  const browser = await startPlainBrowser();
  context = await browser.newContext();
});
afterAll(() => context?.browser()?.close());

/** Counts the nodes and bytes that are left after garbage collection. */
async function measure(session: CDPSession): Promise<{ nodes: number; bytes: number }> {
  for (let n = 0; n < 3; n++) await session.send('HeapProfiler.collectGarbage');
  const { nodes } = await session.send('Memory.getDOMCounters');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  return { nodes, bytes: usedSize };
}

test('100 navigations within a page leave no more in memory than ten do', async () => {
  const at = await openOverlayPage(
    await context.newPage(),
    '<!doctype html><body><nav>Tides</nav><main></main>',
    undefined,
    null,
  );
  const session = await at.page.context().newCDPSession(at.page);
  await session.send('HeapProfiler.enable');
  const visit = (from: number, to: number) =>
    at.page.evaluate(
      async ([from, to]) => {
        for (let n = from!; n < to!; n++) {
          const followed = wordreachTest.nextChange();
          // The event imitates a reader's press. The extension does not follow a page that changes like this by itself.
          dispatchEvent(new Event('pointerdown'));
          // Each visit has the same words, since the extension remembers a page's words on purpose.
          const paragraphs = Array.from(
            { length: 200 },
            (_, i) => `<p>Line ${i}: the tide turned by the quay at night.</p>`,
          );
          document.querySelector('main')!.innerHTML =
            `<article>${paragraphs.join('')}<x-note></x-note></article>`;
          document.querySelector('x-note')!.attachShadow({ mode: 'open' }).innerHTML = '<p>The gulls';
          await followed;
        }
      },
      [from, to],
    );
  await visit(0, 10);
  const early = await measure(session);
  await visit(10, 110);
  const late = await measure(session);
  expect(await at.keys()).toContain('tide×200');
  // One page has about 650 nodes. After 100 visits, fewer nodes may be left than two pages have.
  expect(late.nodes - early.nodes).toBeLessThan(1300);
  expect(late.bytes - early.bytes).toBeLessThan(1_000_000);
});
