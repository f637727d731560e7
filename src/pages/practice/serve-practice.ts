import { findArticle } from '../../overlay/find-article.ts';
import { serveOwnPage } from './serve-own-page.ts';

/** Shades the practice page; `onShaded` is told of each start and stop. */
export function servePractice(onShaded: (isShaded: boolean) => void): void {
  serveOwnPage({
    article: findArticle,
    onStart: (page, signal) => {
      onShaded(true);
      signal.addEventListener('abort', () => onShaded(false), { once: true });
      return page;
    },
  });
}
