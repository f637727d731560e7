import type { OpenCardFunction } from '../card/open-card.ts';
import type { CardSources, Cards, CardsOptions } from '../card/start-cards.ts';
import type { OpenVeil } from '../draw-veil.ts';
import type { FindArticle } from '../find-article.ts';
import type { WatchUnreadText } from '../watch-unread-text.ts';

/** Shows the cards of a document. */
export type ShowCards = (
  doc: Document,
  sources: CardSources,
  options: Pick<CardsOptions, 'loadPlainCard' | 'first'>,
) => Cards;

/** The parts that are loaded into a page only when first needed. Each part is a separate script among the entrypoints. */
export interface PageParts {
  readonly article: FindArticle;
  readonly card: ShowCards;
  readonly 'plain-card': OpenCardFunction;
  readonly veil: OpenVeil;
  readonly unread: WatchUnreadText;
}
