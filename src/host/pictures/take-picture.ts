import { say } from '../../wording/say.ts';
import { browser } from '../browser.ts';
import { readReply } from '../page-talk/hear-messages.ts';
import { readDataAddress, writeDataAddress } from './data-address.ts';
import type { PictureNews, TakenPicture, Taking } from './taken-picture.ts';

/**
 * The pictures that wait for the page that reads them. The background takes the pictures, because the reading page
 * would itself be in front. Each picture is handed over once, from memory, and is never stored.
 */
const waiting = new Map<string, TakenPicture>();

/**
 * The time in milliseconds after which a picture that nobody fetched is dropped. The browser may stop the background
 * earlier.
 */
const FORGOTTEN = 60_000;

/** A part of the view, with the width of the whole view (`view`), in pixels of the page. */
interface Place {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly view: number;
}

/** A picture as found in its page: its file, or its place in the view when the file cannot be read. */
interface FoundPicture {
  readonly data: string | null;
  readonly place: Place | null;
}

/** Returns the picture with this id, once, to the page that reads it. Returns null when the picture is gone. */
export function fetchPicture(id: string): TakenPicture | null {
  const picture = waiting.get(id) ?? null;
  waiting.delete(id);
  return picture;
}

/**
 * Takes a picture of the screen of the tab whose button was pressed. The page that has earlier screens of the tab reads
 * the picture; without such a page, a new page opens. Never rejects.
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
 * Takes a picture that was chosen with the context menu of a page, and opens a new page that reads it. Takes the file
 * of the picture if the page may read the file, otherwise the part of the screen that shows the picture. Never rejects.
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
    // A frame does not know its own position in the page, so the whole screen is taken for a picture in a frame.
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

/**
 * Keeps a picture until it is fetched. With `joins`, offers the picture to a page that reads screens of the tab. Opens
 * a new page if none takes the picture.
 */
async function hand(picture: TakenPicture, joins: boolean): Promise<Taking> {
  const id = crypto.randomUUID();
  waiting.set(id, picture);
  setTimeout(() => waiting.delete(id), FORGOTTEN);
  if (joins) {
    const news: PictureNews = { picture: id, tab: picture.tab };
    // The browser rejects when no page listens.
    const heard = await browser.runtime.sendMessage(news).then(readReply, () => undefined);
    if (heard === true) return { done: 'added' };
  }
  await browser.tabs.create({
    url: browser.runtime.getURL(`/picture.html#take/${id}`),
    ...(joins ? { openerTabId: picture.tab } : {}),
  });
  return { done: 'opened' };
}

/** Returns the part of a captured view as a data URL. */
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

/**
 * Runs in the page. Finds the area of the canvases or large pictures in the view, and the title and address of the
 * page.
 */
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

/** Runs in the page. Returns the file of a picture, or its place in the view. */
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
    // A vector image (SVG) has no pixels of its own. It is taken as shown on the screen.
    if (response.ok && /^image\/(?!svg)/.test(blob.type) && blob.size < 25_000_000)
      return { ...about, data: await asText(blob), place: null };
  } catch {
    // The picture belongs to another site. The page may show it but not read it.
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
