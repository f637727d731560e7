import { cardStyle } from '../../src/overlay/card/card-style.ts';
import { createFramedCard } from '../../src/overlay/card/open-framed-card.ts';
import cardPage from '../../src/pages/card/card-page.css?inline';
import { serveCard } from '../../src/pages/card/serve-card.tsx';
import { speakEnglish } from '../../src/wording/speak-english.ts';

/** The code of the cards for a test that runs only the cards in a page. */
export { openPlainCard } from '../../src/overlay/card/open-plain-card.tsx';
export { startCards } from '../../src/overlay/card/start-cards.ts';
export { watchAltClick } from '../../src/overlay/card/watch-alt-click.ts';

speakEnglish();

/**
 * Serves the card inside its frame. In the extension, a page of the extension does this. The card is told that nothing
 * ever covers it.
 */
export function serveIn(view: Window & typeof globalThis, line: Parameters<typeof serveCard>[1]): void {
  const sheet = new view.CSSStyleSheet();
  sheet.replaceSync(`${cardStyle}\n${cardPage}`);
  view.document.adoptedStyleSheets = [sheet];
  serveCard(view.document, line, () => ({ isSeen: () => null, seenSince: () => 0 }));
}

interface Policies {
  createPolicy(
    name: string,
    rules: { createHTML(text: string): string },
  ): { createHTML(text: string): string };
}

/**
 * Opens cards in an empty frame of the page itself. A click in a card counts at once, or after the card has been open
 * for `rest`. The content of a card comes once `ready` resolves.
 */
export const makeOpenCard = (rest: number | undefined, ready: Promise<void>) =>
  createFramedCard({
    ...(rest !== undefined && { rest }),
    openLine: (frame) => {
      const { trustedTypes: policies } = globalThis as { trustedTypes?: Policies };
      const html = '<!doctype html><html lang="en"><title>Card</title>';
      const name = `card ${Math.random()}`;
      frame.srcdoc = policies?.createPolicy(name, { createHTML: (text) => text }).createHTML(html) ?? html;
      return new Promise((resolve) => {
        const onLoad = (): void => {
          const { port1, port2 } = new MessageChannel();
          const view = frame.contentWindow as Window & { wordreachCards: { serveIn: typeof serveIn } };
          void ready.then(() =>
            view.wordreachCards.serveIn(view as unknown as Window & typeof globalThis, over(port2)),
          );
          resolve(over(port1));
        };
        frame.addEventListener('load', onLoad, { once: true });
      });
    },
  });

function over(port: MessagePort) {
  return {
    tell: (message: unknown) => port.postMessage(message),
    hear: (on: (message: never) => void) => {
      port.onmessage = ({ data }) => on(data as never);
    },
    cut: () => port.close(),
  };
}
