import type { TestBrowser } from './browser.ts';

/**
 * Closes all tabs except the first, and deletes all data stored by the extension. Uses an extension page that reads no
 * tables.
 */
export async function clearKept(browser: TestBrowser): Promise<void> {
  for (const open of browser.context.pages().slice(1)) await open.close();
  const page = await browser.open(browser.inside('privacy.html'));
  await page.evaluate(async () => {
    localStorage.clear();
    await Promise.all([chrome.storage.local.clear(), chrome.storage.sync.clear()]);
    for (const { name } of await indexedDB.databases())
      await new Promise((resolve) => {
        indexedDB.deleteDatabase(name!).onsuccess = resolve;
      });
  });
  await page.close();
}
