import { hearMessages } from '../../host/page-talk/hear-messages.ts';
import { answer, isQuestion } from '../../host/page-talk/messages.ts';
import { hostPage, offerPart } from '../../host/page-talk/page-host.ts';
import { openCard } from '../../overlay/card/open-card.tsx';
import { findArticle } from '../../overlay/find-article.ts';
import type { PageParts } from '../../overlay/page/page-parts.ts';
import { startPage } from '../../overlay/page/start-page.ts';

/**
 * Shades the page this runs in when the toolbar button is pressed. Browsers put no script into a page of an extension, so it holds the
 * content script itself, and starts it when the background asks. `onShaded` is told of each start and stop.
 */
export function servePractice(onShaded: (isShaded: boolean) => void): void {
  offerPart<PageParts>({ card: openCard, article: findArticle });
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
