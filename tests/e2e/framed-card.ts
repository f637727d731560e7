import type { Frame, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { TestBrowser } from './browser.ts';

const findCard = (page: Page): Frame | undefined =>
  page.frames().find((frame) => frame.url().includes('/card.html#'));

/** Waits for the frame of an open card in a page, and returns the frame. */
export async function cardFrame(page: Page): Promise<Frame> {
  await expect.poll(() => findCard(page), { timeout: 10_000 }).toBeTruthy();
  return findCard(page)!;
}

/**
 * Rests the pointer on a word until the word's card opens. The pointer moves there again every two seconds, since
 * nothing may be listening to its first moves yet.
 */
export async function restOn(
  page: Page,
  word: Locator,
  isOpen: () => boolean | Promise<boolean>,
): Promise<void> {
  const { x, y, width, height } = (await word.boundingBox())!;
  let looks = 0;
  await expect
    .poll(
      async () => {
        if (looks++ % 20 === 0) {
          await page.mouse.move(5, 5);
          await page.mouse.move(x + width / 2, y + height / 2, { steps: 3 });
        }
        return isOpen();
      },
      { timeout: 20_000, interval: 100 },
    )
    .toBe(true);
}

/** Shades a page and rests the pointer on a word, by default the first `<b>`, until the word's card opens. */
export async function openCardOn(
  browser: TestBrowser,
  page: Page,
  word = page.locator('b').first(),
): Promise<Frame> {
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  await restOn(page, word, () => findCard(page) !== undefined);
  const card = await cardFrame(page);
  await card.getByRole('button', { name: 'close' }).waitFor();
  return card;
}

/**
 * Presses Escape, which closes a card. The key press is not awaited, because Chromium may never answer for a key whose
 * frame is removed before the key is released.
 */
export function pressEscape(page: Page): void {
  void page.keyboard.press('Escape').catch(() => undefined);
}
