import { browser } from '../browser.ts';

/** A page in a tab that the extension may read, because its button was pressed there. */
export interface OpenTab {
  readonly id: number;
  readonly title: string;
  readonly url: string;
}

/**
 * Returns the tabs that may be read, and the number of all other tabs. The browser tells neither the title nor the
 * address of the other tabs.
 */
export async function listOpenTabs(): Promise<{ readonly readable: OpenTab[]; readonly closed: number }> {
  const own = browser.runtime.getURL('');
  const tabs = (await browser.tabs.query({})).filter(({ url }) => !url?.startsWith(own));
  const asked = await Promise.all(tabs.map(({ id }) => (id === undefined ? null : askTab(id))));
  const readable = asked.filter((tab) => tab !== null);
  return { readable, closed: tabs.length - readable.length };
}

/** Runs a script in the tab, because only this shows whether the tab may be read. */
async function askTab(id: number): Promise<OpenTab | null> {
  try {
    const [done] = await browser.scripting.executeScript({
      target: { tabId: id },
      injectImmediately: true,
      func: () => ({ title: document.title, url: location.href }),
    });
    const page = done?.result as { title: string; url: string } | undefined;
    return page ? { id, ...page } : null;
  } catch {
    return null;
  }
}
