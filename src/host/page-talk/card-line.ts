import type { CardLine, FromCard, ToCard } from '../../contract/card-contract.ts';
import { browser } from '../browser.ts';

/**
 * Puts the card's page into a frame, and gives the line to it once it is there. The line is handed to the
 * extension's page and to no other; it is given to the first that comes with its word, which the page of the web does not know.
 */
export function openCardLine(frame: HTMLIFrameElement): Promise<CardLine<ToCard, FromCard>> {
  const address = browser.runtime.getURL('/card.html');
  const { protocol, host } = new URL(address);
  const isFirefox = protocol === 'moz-extension:';
  // In Chromium the address changes from start to start; the page that opens at it has the extension's origin all the same.
  const origin = `${protocol}//${isFirefox ? host : browser.runtime.id}`;
  const word = crypto.randomUUID();
  return new Promise((resolve) => {
    frame.addEventListener('load', function hand() {
      // In Firefox the empty document, with which every frame begins, is told of too.
      if (frame.contentDocument?.URL === 'about:blank') return;
      frame.removeEventListener('load', hand);
      const { port1, port2 } = new MessageChannel();
      frame.contentWindow?.postMessage(word, origin, [port2]);
      resolve(lineOver(port1));
    });
    // Events of Firefox tell a page of elements in closed roots. So the frame has no address about it, which tells this install from others.
    if (isFirefox) queueMicrotask(() => frame.contentWindow?.location.replace(`${address}#${word}`));
    else frame.src = `${address}#${word}`;
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
