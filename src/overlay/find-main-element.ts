/**
 * Returns the only article in the main element of a page, or else the only main element. Returns null if there is none,
 * or more than one.
 */
export function findMainElement(doc: Document): Element | null {
  const mains = doc.querySelectorAll('main, [role="main"]');
  const within = mains.length === 1 ? mains[0]! : doc;
  const articles = within.querySelectorAll('article');
  return articles.length === 1 ? articles[0]! : mains.length === 1 ? mains[0]! : null;
}
