import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startPlainBrowser } from './browser.ts';
import { openOverlayPage } from './overlay-page.ts';

declare global {
  /** The number of times that the page was asked what is drawn at a point. */
  var looks: number;
}

let tab: Page;
beforeAll(async () => {
  const browser = await startPlainBrowser();
  tab = await browser.newPage();
});
afterAll(() => tab?.context().browser()?.close());

/** Asks for the words of the page. Returns the covered words, and how often the page was asked what is drawn. */
async function ask(): Promise<{ covered: number; looks: number }> {
  return tab.evaluate(async () => {
    globalThis.looks = 0;
    const { covered } = await wordreachTest.overlay.words();
    return { covered, looks: globalThis.looks };
  });
}

test('a page is looked at again for text that is not read only after it has changed', async () => {
  const at = await openOverlayPage(
    tab,
    '<p>The tide turns at the quay.</p><p>Gulls sit on the wall.</p>',
    () => {
      const { elementFromPoint } = Document.prototype;
      Document.prototype.elementFromPoint = function look(x, y) {
        globalThis.looks++;
        return elementFromPoint.call(this, x, y);
      };
    },
  );
  const first = await ask();
  expect(first.covered).toBe(0);
  expect(first.looks).toBeGreaterThan(0);
  expect(await ask()).toEqual({ covered: 0, looks: 0 });
  await at.change(() => {
    document.body.insertAdjacentHTML(
      'beforeend',
      '<div style="position: fixed; inset: 0; background: white">Join us today</div>',
    );
  });
  const changed = await ask();
  expect(changed.looks).toBeGreaterThan(0);
  expect(changed.covered).toBe(11);
});
