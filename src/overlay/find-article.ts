import { Readability } from '@mozilla/readability';
import { textsIn } from './texts-in.ts';

/** The text nodes of a page that are its article. */
export interface Article {
  readonly title: string;
  readonly byline: string | null;
  /** When it came out, as the page says it. */
  readonly date: string | null;
  readonly texts: readonly Text[];
}

export type FindArticle = (doc: Document) => Article | null;

/**
 * Finds the article of a page by Readability on a copy, whose texts are led back to those of the page by walking both
 * side by side. Null when there is none. The page is not touched.
 */
export function findArticle(doc: Document): Article | null {
  const copy = doc.cloneNode(true) as Document;
  const original = new Map<Node, Text>();
  const here = doc.createTreeWalker(doc, NodeFilter.SHOW_TEXT);
  const there = copy.createTreeWalker(copy, NodeFilter.SHOW_TEXT);
  while (here.nextNode() && there.nextNode()) original.set(there.currentNode, here.currentNode as Text);
  const article = new Readability<Node>(copy, { serializer: (node) => node }).parse();
  if (!article?.content) return null;
  const texts = leadBack(textsIn(article.content), original);
  return {
    title: article.title ?? doc.title,
    byline: article.byline ?? null,
    date: article.publishedTime ?? null,
    texts,
  };
}

/** Readability makes some parts anew; a text of theirs is taken for the first one with the same words. */
function leadBack(copies: readonly Text[], original: ReadonlyMap<Node, Text>): Text[] {
  const known = new Set(copies.flatMap((copy) => original.get(copy) ?? []));
  const alike = new Map<string, Text[]>();
  for (const text of original.values()) {
    const words = text.data.trim();
    if (words === '' || known.has(text)) continue;
    const others = alike.get(words);
    if (others) others.push(text);
    else alike.set(words, [text]);
  }
  return copies.flatMap((copy) => original.get(copy) ?? alike.get(copy.data.trim())?.shift() ?? []);
}
