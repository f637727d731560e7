/** The modules that a test needs to run the overlay alone in a page. */
export { findArticle } from '../../src/overlay/find-article.ts';
export { startOverlay } from '../../src/overlay/start-overlay.ts';
export { watchUnreadText } from '../../src/overlay/watch-unread-text.ts';
