import type { Frame, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { TestBrowser } from './browser.ts';

/** The frame of an open card in a page; waits for it. */
export async function cardFrame(page: Page): Promise<Frame> {
  const find = (): Frame | undefined => page.frames().find((frame) => frame.url().includes('/card.html#'));
  await expect.poll(find, { timeout: 10_000 }).toBeTruthy();
  return find()!;
}

/** Shades a page and rests the pointer on its first `<b>` until the card of the word has come. */
export async function openCardOn(
  browser: TestBrowser,
  page: Page,
  word = page.locator('b').first(),
): Promise<Frame> {
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  const { x, y, width, height } = (await word.boundingBox())!;
  // More than one move: the first may come before what shows cards.
  await page.mouse.move(5, 5);
  await page.mouse.move(x + width / 2, y + height / 2, { steps: 3 });
  const card = await cardFrame(page);
  await card.getByRole('button', { name: 'close' }).waitFor();
  return card;
}
