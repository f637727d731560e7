import type { Frame, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { browserName, startBrowser, type TestBrowser } from './browser.ts';

let browser: TestBrowser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
afterEach(async () => {
  for (const page of browser.context.pages().slice(1)) await page.close();
});

const story =
  '<!doctype html><meta charset="utf-8"><title>Quay</title><body style="margin: 40px; font: 20px/1.6 serif"><p>The <b>lighthouse</b> keeper was hoping.</p>';

async function openCard(html = story): Promise<{ page: Page; card: Frame }> {
  const page = await browser.open(browser.serve('card.html', html));
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  const { x, y } = (await page.locator('b').boundingBox())!;
  await page.mouse.move(5, 5);
  await page.mouse.move(x + 10, y + 10);
  let card: Frame | undefined;
  if (browserName === 'firefox') {
    await page.waitForTimeout(3000);
    await page.screenshot({ path: '/tmp/card-ff0.png' });
    console.log(
      page.frames().map((frame) => frame.url()),
      await page.evaluate(() => document.documentElement.outerHTML.slice(-200)),
    );
    const { inTab } = browser as unknown as { inTab<T>(run: (document: Document) => T): Promise<T> };
    console.log(
      await inTab((document) =>
        [...document.querySelectorAll('[popover]')].map((host) => {
          const root = (host as unknown as { openOrClosedShadowRoot: ShadowRoot }).openOrClosedShadowRoot;
          const frame = root.querySelector('iframe');
          return root.innerHTML + frame?.contentWindow?.location;
        }),
      ),
    );
  }
  await expect
    .poll(() => (card = page.frames().find((frame) => frame.url().includes('/card.html#'))), {
      timeout: 8000,
    })
    .toBeTruthy();
  await card!.getByRole('button', { name: 'close' }).waitFor();
  return { page, card: card! };
}

test('spike', async () => {
  const { page, card } = await openCard();
  console.log(
    browserName,
    card.url(),
    await card.evaluate(() => location.href + ' ' + document.body.innerText.slice(0, 300)),
  );
  const box = await card.locator('.sheet').boundingBox();
  console.log(JSON.stringify(box));
  await page.evaluate(() => {
    const seen: unknown[] = [];
    Object.assign(window, { seen });
    const tell = (one: unknown) =>
      one instanceof Node ? `${one.nodeName} in ${one.getRootNode().nodeName}` : String(one);
    for (const kind of [
      'pointerover',
      'pointermove',
      'mouseover',
      'pointerout',
      'pointerdown',
      'focusin',
      'blur',
      'focus',
      'load',
    ])
      addEventListener(
        kind,
        (event) => {
          const all = event as unknown as Record<string, unknown>;
          seen.push(
            [
              kind,
              ...[
                'target',
                'originalTarget',
                'explicitOriginalTarget',
                'relatedTarget',
                'rangeParent',
                'toElement',
                'fromElement',
              ].map((name) => `${name}: ${tell(all[name])}`),
            ].join(' '),
          );
        },
        true,
      );
    addEventListener('securitypolicyviolation', (event) => seen.push(event.blockedURI), true);
  });
  await page.mouse.move(box!.x + 30, box!.y + 30);
  await page.mouse.move(box!.x + 60, box!.y + 60);
  await page.mouse.down();
  await page.mouse.up();
  await page.mouse.move(box!.x + 60, box!.y + 500);
  console.log(
    await page.evaluate(
      ({ x, y }) => {
        const tell = (one: unknown) =>
          one instanceof Node ? `${one.nodeName} in ${one.getRootNode().nodeName}` : String(one);
        const w = window as unknown as { find(text: string): boolean; seen: string[] };
        const at = document.caretPositionFromPoint?.(x, y);
        const found = ['of your sequence', 'lighthouse', 'hear it'].map((text) => `${text} ${w.find(text)}`);
        document.execCommand('selectAll');
        return JSON.stringify(
          {
            found,
            selected: getSelection()!.toString(),
            frames: frames.length,
            entries: performance.getEntries().map(({ name, entryType }) => `${entryType} ${name}`),
            caret: at && tell(at.offsetNode),
            caretRange: tell(
              (
                document as unknown as { caretRangeFromPoint?: (x: number, y: number) => Range | null }
              ).caretRangeFromPoint?.(x, y)?.startContainer,
            ),
            elements: document.elementsFromPoint(x, y).map(tell),
            active: tell(document.activeElement),
            seen: w.seen,
            html: document.documentElement.lastElementChild!.outerHTML,
            v2: 'isVisible' in IntersectionObserverEntry.prototype,
            sheets: document.styleSheets.length,
          },
          null,
          1,
        );
      },
      { x: box!.x + 30, y: box!.y + 30 },
    ),
  );
  await page.screenshot({ path: `/tmp/card-${browserName}.png` });
});
