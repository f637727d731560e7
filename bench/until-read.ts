import type { Page, Worker } from 'playwright-core';

/** Waits until a page that is shaded has no more words from one rest of its to the next: all of it is read then. */
export async function untilRead(page: Page, background: Worker): Promise<void> {
  // As the panel does beside the page; a panel in a tab of its own would hide the page and make it draw again.
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
