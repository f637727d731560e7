import type { Article } from './find-article.ts';
import { textsIn } from './texts-in.ts';

/** The one main element of a page, or the one article in it; null where there is none or are several. */
export function findMainElement(doc: Document): Article | null {
  const mains = doc.querySelectorAll('main, [role="main"]');
  const within = mains.length === 1 ? mains[0]! : doc;
  const articles = within.querySelectorAll('article');
  const main = articles.length === 1 ? articles[0]! : mains.length === 1 ? mains[0]! : null;
  return main && { title: doc.title, byline: null, date: null, texts: textsIn(main) };
}
