import type { Page, Worker } from 'playwright-core';

/**
 * Waits until the number of words of a shaded page stays the same from one rest to the next. The whole page has then
 * been read.
 */
export async function untilRead(page: Page, background: Worker): Promise<void> {
  // Asks for the words as the panel does. A panel in a tab of its own would hide the page and make the page draw again.
  const countWords = (): Promise<number> =>
    background.evaluate(async () => {
      const [tab] = await chrome.tabs.query({ active: true, lastFocusedWindow: true });
      const page = await chrome.tabs.sendMessage(tab!.id!, { to: 'page', ask: 'words' });
      return (page as { done: { words: [string, number][] } }).done.words.reduce(
        (sum, [, count]) => sum + count,
        0,
      );
    });
  for (let words = 0, before = -1; words === 0 || words !== before; ) {
    before = words;
    await page.evaluate(() => new Promise((rested) => requestIdleCallback(rested)));
    words = await countWords();
  }
}
