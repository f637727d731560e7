import type { ShadedPage } from '../../contract/page-contract.ts';
import { openCardLine } from '../../host/page-talk/card-line.ts';
import { hearMessages } from '../../host/page-talk/hear-messages.ts';
import { answer, isQuestion } from '../../host/page-talk/messages.ts';
import { hostPage, offerPart } from '../../host/page-talk/page-host.ts';
import { createFramedCard } from '../../overlay/card/open-framed-card.ts';
import { openPlainCard } from '../../overlay/card/open-plain-card.tsx';
import { startCards } from '../../overlay/card/start-cards.ts';
import { openVeil } from '../../overlay/draw-veil.ts';
import type { PageParts } from '../../overlay/page/page-parts.ts';
import { startPage } from '../../overlay/page/start-page.ts';

interface OwnPage {
  readonly article: PageParts['article'];
  /**
   * Called at each start of the shading, with a signal that ends with the shading. Returns the object that answers for
   * the page.
   */
  readonly onStart: (page: ShadedPage, signal: AbortSignal) => ShadedPage;
}

/**
 * Shades a page of the extension when the background asks, that is, when the toolbar button is pressed. Browsers inject
 * no scripts into such a page, so this page itself loads the content script and all its parts. Returns a function that
 * starts the shading at once.
 */
export function serveOwnPage({ article, onStart }: OwnPage): () => true {
  const openCard = createFramedCard({ openLine: openCardLine });
  offerPart<PageParts>({
    card: (doc, sources, options) => startCards(doc, sources, { ...options, openCard }),
    'plain-card': openPlainCard,
    article,
    veil: openVeil,
  });
  const start = (): true => {
    hostPage<PageParts>((options) => onStart(startPage(document, options), options.signal));
    return true;
  };
  hearMessages((message, sender) =>
    isQuestion(message, 'page') ? answer({ start }, message, sender) : undefined,
  );
  return start;
}
