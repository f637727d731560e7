/** The modules of the overlay that a test needs to run it by itself in a page. */
export { findArticle } from '../../src/overlay/find-article.ts';
export { startOverlay } from '../../src/overlay/start-overlay.ts';
