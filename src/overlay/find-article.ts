import { Readability } from '@mozilla/readability';
import { findByParagraphs } from './find-by-paragraphs.ts';
import { putBack } from './put-back.ts';
import { sortInPageOrder } from './sort-in-page-order.ts';
import { textsIn } from './texts-in.ts';
import { trimStory } from './trim-story.ts';
import { nextTurn } from './work-in-slices.ts';

/** The text nodes of a page that are its article. */
export interface Article {
  readonly title: string;
  readonly byline: string | null;
  /** When it came out, as the page says it. */
  readonly date: string | null;
  readonly texts: readonly Text[];
}

export type FindArticle = (doc: Document) => Promise<Article | null>;

/**
 * Larger pages would keep the browser busy for too long; they are looked at by their own elements. In elements, and in
 * characters: a book on one page.
 */
const LARGEST = 6000;
const LONGEST = 200_000;

/**
 * Finds the article of a page, its headline first and without what only looks like a part of it. Null when there is
 * none. The page is not touched, and has its turn between the steps; what it takes away meanwhile is left out.
 */
export async function findArticle(doc: Document, isLarge = isTooLarge(doc)): Promise<Article | null> {
  await nextTurn();
  const found = isLarge ? wholeOf(doc, findByParagraphs(doc)) : findByLibrary(doc);
  if (!found) return null;
  await nextTurn();
  const story = isLarge ? found.texts : putBack(found.texts);
  const headline = findHeadline(doc, found.title, story);
  await nextTurn();
  const known = new Set(story);
  const besides = headline.filter((text) => !known.has(text));
  // All of an element is in order as it is.
  const isSorted = isLarge && besides.length === 0;
  const texts = isSorted ? story : sortInPageOrder([...besides, ...story], (text) => text);
  const trimmed = await trimStory(texts, new Set(headline), found.byline);
  await nextTurn();
  return { ...found, texts: trimmed };
}

/** All of an element of a page as its article. */
function wholeOf({ title }: Document, element: Element | null): Article | null {
  return element && { title, byline: null, date: null, texts: textsIn(element) };
}

/** The content of scripts and styles is no text of the page. */
function isTooLarge(doc: Document): boolean {
  if (doc.getElementsByTagName('*').length > LARGEST) return true;
  let length = 0;
  for (const { data, parentElement } of textsIn(doc.body))
    if (!/^(?:SCRIPT|STYLE|NOSCRIPT|TEMPLATE)$/.test(parentElement?.tagName ?? '')) length += data.length;
  return length > LONGEST;
}

/**
 * By Readability on a copy, whose texts are led back to the page's own by walking both side by side.
 */
function findByLibrary(doc: Document): Article | null {
  const copy = doc.cloneNode(true) as Document;
  const original = new Map<Node, Text>();
  const here = doc.createTreeWalker(doc, NodeFilter.SHOW_TEXT);
  const there = copy.createTreeWalker(copy, NodeFilter.SHOW_TEXT);
  while (here.nextNode() && there.nextNode()) original.set(there.currentNode, here.currentNode as Text);
  const parts = numberParts(doc, copy);
  const article = new Readability<Node>(copy, { serializer: (node) => node }).parse();
  if (!article?.content) return null;
  const texts = leadBack(textsIn(article.content), original, parts);
  return {
    title: article.title ?? doc.title,
    byline: article.byline ?? null,
    date: article.publishedTime ?? null,
    texts,
  };
}

/** The attribute that numbers the elements of the copy; no page has one of this name. */
const NUMBER = 'data-part-of-page';

/** Gives each element of the copy its number, and the page’s elements in the same order. */
function numberParts(doc: Document, copy: Document): Element[] {
  for (const [i, element] of [...copy.body.getElementsByTagName('*')].entries())
    if (element.tagName !== 'IMG') element.setAttribute(NUMBER, `${i}`);
  return [...doc.body.getElementsByTagName('*')];
}

/**
 * Readability makes some parts anew, and all of them where it tries a second time; a text of theirs is the one with the same words in the
 * element with the same number, or else the first one with the same words.
 */
function leadBack(
  copies: readonly Text[],
  original: ReadonlyMap<Node, Text>,
  parts: readonly Element[],
): Text[] {
  const used = new Set(copies.flatMap((copy) => original.get(copy) ?? []));
  const alike = new Map<string, Text[]>();
  for (const text of original.values()) {
    const words = text.data.trim();
    if (words === '' || used.has(text)) continue;
    const others = alike.get(words);
    if (others) others.push(text);
    else alike.set(words, [text]);
  }
  const take = (copy: Text): Text | undefined => {
    const others = (alike.get(copy.data.trim()) ?? []).filter((text) => !used.has(text));
    const part = parts[Number(copy.parentElement?.closest(`[${NUMBER}]`)?.getAttribute(NUMBER) ?? -1)];
    const text = others.find(({ parentElement }) => parentElement === part) ?? others[0];
    if (text) used.add(text);
    return text;
  };
  return copies.flatMap((copy) => original.get(copy) ?? take(copy) ?? []);
}

/**
 * Readability leaves out the heading that says the title again. Where no heading does, it is the one h1 of the main part over the story.
 */
function findHeadline(doc: Document, title: string, story: readonly Text[]): Text[] {
  const first = story.find(({ data }) => /\p{L}/u.test(data));
  const wanted = plain(title);
  const alike = [...doc.querySelectorAll('h1, h2')].filter(({ textContent }) => {
    const says = plain(textContent ?? '');
    return says !== '' && (says === wanted || (says.length > 8 && wanted.startsWith(says)));
  });
  const heads = doc.querySelectorAll('main h1, article h1, [role="main"] h1, [itemprop~="headline"]');
  const only = heads.length === 1 && first && isBefore(heads[0]!, first) ? heads[0] : undefined;
  // A bar that stays in view has the title too, before the heading over the story.
  const heading = first ? (alike.findLast((one) => isBefore(one, first)) ?? alike[0]) : alike[0];
  const found = heading ?? only;
  return found ? textsIn(found) : [];
}

function isBefore(element: Element, text: Text): boolean {
  return (element.compareDocumentPosition(text) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
}

function plain(text: string): string {
  return text.normalize('NFC').toLowerCase().replace(/\s+/g, ' ').trim();
}
