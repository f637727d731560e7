/** What the overlay is made of when a test runs it in a page by itself. */
export { findArticle } from '../../src/overlay/find-article.ts';
export { startOverlay } from '../../src/overlay/start-overlay.ts';
