import { openCardLine } from '../../host/page-talk/card-line.ts';
import { hearMessages } from '../../host/page-talk/hear-messages.ts';
import { answer, isQuestion } from '../../host/page-talk/messages.ts';
import { hostPage, offerPart } from '../../host/page-talk/page-host.ts';
import { createFramedCard } from '../../overlay/card/open-framed-card.ts';
import { openPlainCard } from '../../overlay/card/open-plain-card.tsx';
import { startCards } from '../../overlay/card/start-cards.ts';
import { openVeil } from '../../overlay/draw-veil.ts';
import { findArticle } from '../../overlay/find-article.ts';
import type { PageParts } from '../../overlay/page/page-parts.ts';
import { startPage } from '../../overlay/page/start-page.ts';

/**
 * Shades the page this runs in when the toolbar button is pressed. Browsers put no script into a page of an extension, so it holds the
 * content script itself, and starts it when the background asks. `onShaded` is told of each start and stop.
 */
export function servePractice(onShaded: (isShaded: boolean) => void): void {
  const openCard = createFramedCard({ openLine: openCardLine });
  offerPart<PageParts>({
    card: (doc, sources, options) => startCards(doc, sources, { ...options, openCard }),
    'plain-card': openPlainCard,
    article: findArticle,
    veil: openVeil,
  });
  const start = (): true => {
    hostPage<PageParts>((options) => {
      onShaded(true);
      options.signal.addEventListener('abort', () => onShaded(false), { once: true });
      return startPage(document, options);
    });
    return true;
  };
  hearMessages((message, sender) =>
    isQuestion(message, 'page') ? answer({ start }, message, sender) : undefined,
  );
}
