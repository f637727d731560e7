import type { PagePart } from '../../contract/page-contract.ts';
import { browser } from '../browser.ts';
import { askPage, listInnerFrames, PAGE } from './client.ts';
import { explainClosedPage, explainRefusal } from './explain-closed-page.ts';
import { hearMessages, type Sender } from './hear-messages.ts';
import { isPageNews } from './messages.ts';

const SCRIPT = '/page.js';
/** The pages of the extension itself that can be shaded. */
const OWN = ['/practice.html', '/pdf.html'];

/** The time the browser gets to let the click's permission reach the page, in milliseconds. */
const GRANT = 150;

/** The message sent when the button was pressed on a page that cannot be shaded. An open panel then says why. */
const REFUSED = 'refused';

/** Shades a page, or removes the shading if the page is shaded already. Rejects where shading is not allowed. */
export async function toggleShading(tab: number): Promise<void> {
  if ((await askPage(tab, 'stop', undefined as never)) !== null) return;
  await shadePage(tab).catch((error: unknown) => {
    // If no panel is open, nobody listens. That is no error.
    browser.runtime.sendMessage(REFUSED).catch(() => undefined);
    throw error;
  });
}

/**
 * Puts the content script into a page. Once the page has been read, the script asks for its frames (`shadeFrames`). If
 * the script runs there already, it continues. Rejects where this is not allowed. Chromium occasionally refuses right
 * after the click that allowed it, so a refusal is followed by a second attempt.
 */
export async function shadePage(tab: number): Promise<void> {
  const [done] = await inject(tab, PAGE).catch(async () => {
    if (await askPage(tab, 'start', undefined as never)) return [true];
    await new Promise((resolve) => setTimeout(resolve, GRANT));
    return inject(tab, PAGE);
  });
  if (!done) throw new Error('Nothing runs in this page.');
}

/**
 * Puts the content script into the frames of a page. Web pages can have thirty frames, which share the page's thread,
 * and the script takes some 25 ms in each. A frame that has gone meanwhile does not affect the other frames.
 */
export async function shadeFrames(tab: number): Promise<void> {
  const frames = await listInnerFrames(tab);
  await Promise.all(frames.map((frame) => inject(tab, frame).catch(() => undefined)));
}

function inject(tab: number, frame: number): Promise<unknown[]> {
  return browser.scripting.executeScript({
    target: { tabId: tab, frameIds: [frame] },
    // Otherwise the browser waits for frames that never load. The page itself asks for frames that load later.
    injectImmediately: true,
    files: [SCRIPT],
  });
}

/** Puts a part of the content script into the frame that asked for it. Rejects if the page may no longer be read. */
export async function bringPart(part: PagePart, { tab, frameId = 0 }: Sender): Promise<void> {
  if (tab?.id === undefined) throw new Error('Only a page in a tab can have a part of its script.');
  await browser.scripting.executeScript({
    target: { tabId: tab.id, frameIds: [frameId] },
    injectImmediately: true,
    files: [`/page-${part}.js`],
  });
}

/** Whether a tab may be shaded now. `why` gives the obstacle, or null if only a click on the button is missing. */
export type Access = { readonly allowed: true } | { readonly allowed: false; readonly why: string | null };

/** Checks the access to a tab by running an empty function in it, since the browser gives no other way to find out. */
export async function checkAccess(tab: { id: number; url: string | undefined }): Promise<Access> {
  try {
    const [done] = await browser.scripting.executeScript({
      target: { tabId: tab.id },
      injectImmediately: true,
      func: () => undefined,
    });
    // Firefox does not refuse a script for its own pages, but it runs nothing in them.
    return done ? { allowed: true } : { allowed: false, why: explainClosedPage(tab.url) };
  } catch (error) {
    if (OWN.some((page) => tab.url?.startsWith(browser.runtime.getURL(page)))) return { allowed: true };
    return { allowed: false, why: explainClosedPage(tab.url) ?? explainRefusal(error) };
  }
}

/** Returns the browser's number of the tab that contains this page of the extension. */
export async function ownTab(): Promise<number | null> {
  return (await browser.tabs.getCurrent())?.id ?? null;
}

/** Returns the tab in front in this window, or the tab that a test or the start command names in the panel's address. */
export async function findTab(): Promise<{ id: number; url: string | undefined } | null> {
  const named = new URLSearchParams(location.search).get('tab');
  const tab = named
    ? await browser.tabs.get(Number(named))
    : (await browser.tabs.query({ active: true, currentWindow: true }))[0];
  return tab?.id === undefined ? null : { id: tab.id, url: tab.url };
}

/**
 * Calls back when another tab comes to the front, a tab finishes loading, or the button was pressed on a page that
 * cannot be shaded. Stops when aborted.
 */
export function watchTabs(onChange: () => void, signal: AbortSignal): void {
  const activated = (): void => onChange();
  const updated = (_tab: number, { status }: { status?: string }): void => {
    if (status === 'complete') onChange();
  };
  browser.tabs.onActivated.addListener(activated);
  browser.tabs.onUpdated.addListener(updated);
  hearMessages((message) => {
    if (message === REFUSED) onChange();
    return undefined;
  }, signal);
  signal.addEventListener(
    'abort',
    () => {
      browser.tabs.onActivated.removeListener(activated);
      browser.tabs.onUpdated.removeListener(updated);
    },
    { once: true },
  );
}

/** Calls back when a page reports that its words changed or its shading stopped. Stops when aborted. */
export function watchPageNews(onNews: (tab: number) => void, signal: AbortSignal): void {
  hearMessages((message, { tab }) => {
    if (isPageNews(message) && tab?.id !== undefined) onNews(tab.id);
    return undefined;
  }, signal);
}
