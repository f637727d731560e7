import type { CardLine, FromCard, ToCard } from '../../contract/card-contract.ts';
import { browser } from '../browser.ts';

/**
 * Puts the card's page into a frame that is in the page already, and gives the line to it once it is there. The line is handed to the
 * extension's page and to no other; it is given to the first that comes with its word, which the page of the web does not know.
 */
export function openCardLine(frame: HTMLIFrameElement): Promise<CardLine<ToCard, FromCard>> {
  // The address changes from start to start in Chromium; the page that opens at it has the extension's origin all the same.
  const { protocol, host } = new URL(browser.runtime.getURL('/card.html'));
  const origin = `${protocol}//${protocol === 'chrome-extension:' ? browser.runtime.id : host}`;
  return openLine(frame, browser.runtime.getURL('/card.html'), origin);
}

/** The same for a page at any address. */
export function openLine(
  frame: HTMLIFrameElement,
  address: string,
  origin: string,
): Promise<CardLine<ToCard, FromCard>> {
  const word = crypto.randomUUID();
  frame.src = `${address}#${word}`;
  return new Promise((resolve) => {
    frame.addEventListener(
      'load',
      () => {
        const { port1, port2 } = new MessageChannel();
        frame.contentWindow?.postMessage(word, origin, [port2]);
        resolve(lineOver(port1));
      },
      { once: true },
    );
  });
}

/** The card's end, once there is somebody at the other. */
export function joinCardLine(): Promise<CardLine<FromCard, ToCard>> {
  return new Promise((resolve) => {
    addEventListener('message', function hear({ data, ports: [port] }) {
      if (!port || data !== location.hash.slice(1)) return;
      removeEventListener('message', hear);
      resolve(lineOver(port));
    });
  });
}

/** As text, since Firefox hands a content script the page's own objects. */
function lineOver<Told, Heard>(port: MessagePort): CardLine<Told, Heard> {
  return {
    tell: (message) => port.postMessage(JSON.stringify(message)),
    hear: (on) => {
      port.onmessage = ({ data }) => on(JSON.parse(data) as Heard);
    },
    cut: () => port.close(),
  };
}
