import { say } from '../../wording/say.ts';
import { browser } from '../browser.ts';
import { readReply } from '../page-talk/hear-messages.ts';
import { readDataAddress, writeDataAddress } from './data-address.ts';
import type { PictureNews, TakenPicture, Taking } from './taken-picture.ts';

/**
 * Pictures are taken by the background, because the page that reads them would be in front itself, and handed over once, from memory: nothing
 * of them is stored.
 */
const waiting = new Map<string, TakenPicture>();

/** A picture that nobody fetched is let go after so long, in milliseconds; the browser may stop the background before. */
const FORGOTTEN = 60_000;

/** A part of the view, in pixels of the page, and the view's width. */
interface Place {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly view: number;
}

/** A picture as its page gives it: its file, or its place when the file cannot be had. */
interface FoundPicture {
  readonly data: string | null;
  readonly place: Place | null;
}

/** Gives the picture with this id to the page that reads it; null when it is gone. */
export function fetchPicture(id: string): TakenPicture | null {
  const picture = waiting.get(id) ?? null;
  waiting.delete(id);
  return picture;
}

/**
 * Takes a picture of the screen of a tab, whose button was pressed, and has it read: by the page that has its earlier screens, else by a
 * new one. Never rejects.
 */
export async function takeScreen(tabId: number): Promise<Taking> {
  try {
    const tab = await browser.tabs.get(tabId);
    if (!tab.active) return { why: say('host.notInFront') };
    const [found] = await browser.scripting.executeScript({
      target: { tabId },
      injectImmediately: true,
      func: findDrawn,
    });
    const about = found?.result as { title: string; url: string; place: Place | null } | undefined;
    const data = await cutOut(await capture(tab.windowId), about?.place ?? null);
    return await hand({ data, title: about?.title ?? '', url: about?.url ?? '', tab: tabId }, true);
  } catch (error) {
    console.info('The screen was not taken.', error);
    return { why: say('host.noScreen') };
  }
}

/**
 * Takes a picture of a page from the entry of the context menu, and has it read by a new page: its file where the page may have it, else what
 * is seen of it on the screen. Never rejects.
 */
export async function takePicture(
  tab: { readonly id?: number | undefined; readonly windowId?: number | undefined },
  source: string,
  frame: number,
): Promise<Taking> {
  const tabId = tab.id;
  try {
    if (tabId === undefined) return { why: say('host.noScreen') };
    const [ran] = await browser.scripting.executeScript({
      target: { tabId, frameIds: [frame] },
      injectImmediately: true,
      func: findPicture,
      args: [source],
    });
    const found = ran?.result as (FoundPicture & { title: string; url: string }) | undefined;
    const { data, place, title, url } = found ?? { data: null, place: null, title: '', url: '' };
    // Where a frame is in the page is not known from within it, so all of the screen is taken there.
    const picture = data ?? (await cutOut(await capture(tab.windowId), frame === 0 ? place : null));
    return await hand({ data: picture, title, url, tab: tabId }, false);
  } catch (error) {
    console.info('The picture was not taken.', error);
    return { why: say('host.noPicture') };
  }
}

function capture(window: number | undefined): Promise<string> {
  const CURRENT = -2;
  return browser.tabs.captureVisibleTab(window ?? CURRENT, { format: 'png' });
}

/** Keeps a picture until it is fetched, and says so to a page that reads screens of the tab, or opens one. */
async function hand(picture: TakenPicture, joins: boolean): Promise<Taking> {
  const id = crypto.randomUUID();
  waiting.set(id, picture);
  setTimeout(() => waiting.delete(id), FORGOTTEN);
  if (joins) {
    const news: PictureNews = { picture: id, tab: picture.tab };
    // Where no page listens, the browser rejects.
    const heard = await browser.runtime.sendMessage(news).then(readReply, () => undefined);
    if (heard === true) return { done: 'added' };
  }
  await browser.tabs.create({
    url: browser.runtime.getURL(`/picture.html#take/${id}`),
    ...(joins ? { openerTabId: picture.tab } : {}),
  });
  return { done: 'opened' };
}

/** The part of a captured view, as a data address. */
async function cutOut(data: string, place: Place | null): Promise<string> {
  if (place === null || place.width < 1 || place.height < 1) return data;
  const bitmap = await createImageBitmap(readDataAddress(data));
  const scale = bitmap.width / place.view;
  const left = Math.max(0, Math.floor(place.left * scale));
  const top = Math.max(0, Math.floor(place.top * scale));
  const width = Math.min(bitmap.width - left, Math.ceil(place.width * scale));
  const height = Math.min(bitmap.height - top, Math.ceil(place.height * scale));
  const canvas = new OffscreenCanvas(width, height);
  canvas.getContext('2d')!.drawImage(bitmap, left, top, width, height, 0, 0, width, height);
  bitmap.close();
  const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
  return writeDataAddress(bytes, 'image/png');
}

/** Runs in the page: where canvases or large pictures are in the view, and which page it is. */
function findDrawn(): { title: string; url: string; place: Place | null } {
  const boxes = (selector: string): DOMRect[] =>
    [...document.querySelectorAll(selector)]
      .filter((element) => element.checkVisibility())
      .map((element) => element.getBoundingClientRect())
      .map((box) => {
        const left = Math.max(0, box.left);
        const top = Math.max(0, box.top);
        return new DOMRect(
          left,
          top,
          Math.max(0, Math.min(innerWidth, box.right) - left),
          Math.max(0, Math.min(innerHeight, box.bottom) - top),
        );
      })
      .filter(({ width, height }) => width * height > innerWidth * innerHeight * 0.05);
  const canvases = boxes('canvas');
  const found = canvases.length > 0 ? canvases : boxes('img');
  const left = Math.min(...found.map((box) => box.left));
  const top = Math.min(...found.map((box) => box.top));
  const right = Math.max(...found.map((box) => box.right));
  const bottom = Math.max(...found.map((box) => box.bottom));
  const place =
    found.length === 0 ? null : { left, top, width: right - left, height: bottom - top, view: innerWidth };
  return { title: document.title, url: location.href, place };
}

/** Runs in the page: the file of a picture, or where it is seen. */
async function findPicture(source: string): Promise<FoundPicture & { title: string; url: string }> {
  const about = { title: document.title, url: location.href };
  const pictures = [...document.querySelectorAll('img, image')];
  const addressOf = (element: Element): string =>
    element instanceof HTMLImageElement
      ? element.currentSrc || element.src
      : new URL((element as SVGImageElement).href.baseVal, document.baseURI).href;
  const picture = pictures.find((element) => addressOf(element) === source);
  const asText = (blob: Blob): Promise<string> =>
    new Promise((resolve, reject) => {
      const reader = new FileReader();
      reader.onload = () => resolve(String(reader.result));
      reader.onerror = () => reject(reader.error);
      reader.readAsDataURL(blob);
    });
  try {
    const response = await fetch(source, { cache: 'force-cache' });
    const blob = await response.blob();
    // A drawing of lines has no dots of its own; it is taken as it is seen.
    if (response.ok && /^image\/(?!svg)/.test(blob.type) && blob.size < 25_000_000)
      return { ...about, data: await asText(blob), place: null };
  } catch {
    // Another site's, which may be shown but not read.
  }
  if (!picture) return { ...about, data: null, place: null };
  picture.scrollIntoView({ block: 'nearest', behavior: 'instant' });
  await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  const { left, top, right, bottom } = picture.getBoundingClientRect();
  return {
    ...about,
    data: null,
    place: {
      left: Math.max(0, left),
      top: Math.max(0, top),
      width: Math.min(innerWidth, right) - Math.max(0, left),
      height: Math.min(innerHeight, bottom) - Math.max(0, top),
      view: innerWidth,
    },
  };
}
