/** The one main element of a page, or the one article in it; null where there is none or are several. */
export function findMainElement(doc: Document): Element | null {
  const mains = doc.querySelectorAll('main, [role="main"]');
  const within = mains.length === 1 ? mains[0]! : doc;
  const articles = within.querySelectorAll('article');
  return articles.length === 1 ? articles[0]! : mains.length === 1 ? mains[0]! : null;
}
