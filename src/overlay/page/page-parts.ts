import type { OpenCardFunction } from '../card/open-card.tsx';
import type { FindArticle } from '../find-article.ts';

/** What is put into a page only when it is first needed there; each is a script of its own among the entrypoints. */
export interface PageParts {
  readonly article: FindArticle;
  readonly card: OpenCardFunction;
}
