import type { PagePart } from '../../contract/page-contract.ts';
import { browser } from '../browser.ts';
import { askPage, listInnerFrames, PAGE } from './client.ts';
import { explainClosedPage, explainRefusal } from './explain-closed-page.ts';
import { hearMessages, type Sender } from './hear-messages.ts';
import { isPageNews } from './messages.ts';

const SCRIPT = '/page.js';
/** The pages of the extension itself that can be shaded. */
const OWN = ['/practice.html', '/pdf.html'];

/** How long the browser is given to let the click's permission reach the page, in milliseconds. */
const GRANT = 150;

/** Told when the button was pressed on a page that cannot be shaded, so that an open panel says why. */
const REFUSED = 'refused';

/** Shades a page, or takes the shading away where there is one. Rejects where that is not allowed. */
export async function toggleShading(tab: number): Promise<void> {
  if ((await askPage(tab, 'stop', undefined as never)) !== null) return;
  await shadePage(tab).catch((error: unknown) => {
    // Nobody listens when no panel is open; that is no fault.
    browser.runtime.sendMessage(REFUSED).catch(() => undefined);
    throw error;
  });
}

/**
 * Puts the content script into a page, which asks for its frames (`shadeFrames`) when it has been read; where it runs it goes on. Rejects
 * where that is not allowed. Once in a while Chromium refuses right after the click that allowed it, so it is asked twice.
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
 * Puts the content script into the frames of a page. Pages of the web have thirty of them, which share the page's thread: in each the script
 * takes some 25 ms. One that has gone meanwhile costs no other.
 */
export async function shadeFrames(tab: number): Promise<void> {
  const frames = await listInnerFrames(tab);
  await Promise.all(frames.map((frame) => inject(tab, frame).catch(() => undefined)));
}

function inject(tab: number, frame: number): Promise<unknown[]> {
  return browser.scripting.executeScript({
    target: { tabId: tab, frameIds: [frame] },
    // Else the browser waits for frames that never load; what loads later is asked for by the page itself.
    injectImmediately: true,
    files: [SCRIPT],
  });
}

/** Puts a part of the content script into the frame that asked for it. Rejects where the page may not be read any more. */
export async function bringPart(part: PagePart, { tab, frameId = 0 }: Sender): Promise<void> {
  if (tab?.id === undefined) throw new Error('Only a page in a tab can have a part of its script.');
  await browser.scripting.executeScript({
    target: { tabId: tab.id, frameIds: [frameId] },
    injectImmediately: true,
    files: [`/page-${part}.js`],
  });
}

/** Whether a tab may be shaded now; `why` says what prevents it, null for want of a click on the button. */
export type Access = { readonly allowed: true } | { readonly allowed: false; readonly why: string | null };

/** Finds out by running nothing at all in the tab, since only then does the browser tell. */
export async function checkAccess(tab: { id: number; url: string | undefined }): Promise<Access> {
  try {
    const [done] = await browser.scripting.executeScript({
      target: { tabId: tab.id },
      injectImmediately: true,
      func: () => undefined,
    });
    // Firefox does not refuse its own pages, but runs nothing in them.
    return done ? { allowed: true } : { allowed: false, why: explainClosedPage(tab.url) };
  } catch (error) {
    if (OWN.some((page) => tab.url?.startsWith(browser.runtime.getURL(page)))) return { allowed: true };
    return { allowed: false, why: explainClosedPage(tab.url) ?? explainRefusal(error) };
  }
}

/** The browser's number of the tab this page of the extension is in. */
export async function ownTab(): Promise<number | null> {
  return (await browser.tabs.getCurrent())?.id ?? null;
}

/** The tab in front in this window, or the one a test or the start command names in the panel's address. */
export async function findTab(): Promise<{ id: number; url: string | undefined } | null> {
  const named = new URLSearchParams(location.search).get('tab');
  const tab = named
    ? await browser.tabs.get(Number(named))
    : (await browser.tabs.query({ active: true, currentWindow: true }))[0];
  return tab?.id === undefined ? null : { id: tab.id, url: tab.url };
}

/** Calls back when another tab comes to the front, one finishes loading, or a page refused the button; until aborted. */
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

/** Calls back when a page says that its words changed or shading stopped, until aborted. */
export function watchPageNews(onNews: (tab: number) => void, signal: AbortSignal): void {
  hearMessages((message, { tab }) => {
    if (isPageNews(message) && tab?.id !== undefined) onNews(tab.id);
    return undefined;
  }, signal);
}
