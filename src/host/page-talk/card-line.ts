import type { CardLine, FromCard, ToCard } from '../../contract/card-contract.ts';
import { browser } from '../browser.ts';

/**
 * Loads the card's page into a frame, and returns the line to the card once the page is there. Only the extension's
 * page can receive the line. The card accepts the first line that comes with the card's secret word, which the web page
 * does not know.
 */
export function openCardLine(frame: HTMLIFrameElement): Promise<CardLine<ToCard, FromCard>> {
  const address = browser.runtime.getURL('/card.html');
  const { protocol, host } = new URL(address);
  const isFirefox = protocol === 'moz-extension:';
  // In Chromium the address changes at every start. The page at this address still has the origin of the extension.
  const origin = `${protocol}//${isFirefox ? host : browser.runtime.id}`;
  const word = crypto.randomUUID();
  return new Promise((resolve) => {
    frame.addEventListener('load', function hand() {
      // Firefox also fires a load event for the empty document with which every frame begins.
      if (frame.contentDocument?.URL === 'about:blank') return;
      frame.removeEventListener('load', hand);
      const { port1, port2 } = new MessageChannel();
      frame.contentWindow?.postMessage(word, origin, [port2]);
      resolve(lineOver(port1));
    });
    // In Firefox, events reveal elements in closed shadow roots to a page. So the frame element carries no address,
    // because the address distinguishes this install from others.
    if (isFirefox) queueMicrotask(() => frame.contentWindow?.location.replace(`${address}#${word}`));
    else frame.src = `${address}#${word}`;
  });
}

/** Returns the card's end of the line, once the other end is connected. */
export function joinCardLine(): Promise<CardLine<FromCard, ToCard>> {
  return new Promise((resolve) => {
    addEventListener('message', function hear({ data, ports: [port] }) {
      if (!port || data !== location.hash.slice(1)) return;
      removeEventListener('message', hear);
      resolve(lineOver(port));
    });
  });
}

/** Sends messages as text, since Firefox hands a content script the page's own objects. */
function lineOver<Told, Heard>(port: MessagePort): CardLine<Told, Heard> {
  return {
    tell: (message) => port.postMessage(JSON.stringify(message)),
    hear: (on) => {
      port.onmessage = ({ data }) => on(JSON.parse(data) as Heard);
    },
    cut: () => port.close(),
  };
}
