import { Readability } from '@mozilla/readability';
import { findByParagraphs } from './find-by-paragraphs.ts';
import { putBack } from './put-back.ts';
import { sortInPageOrder } from './sort-in-page-order.ts';
import { textsIn } from './texts-in.ts';
import { trimStory } from './trim-story.ts';
import { nextTurn } from './work-in-slices.ts';

/** The text nodes that make up the article of a page. */
export interface Article {
  readonly title: string;
  readonly byline: string | null;
  /** The publication date, as the page gives it. */
  readonly date: string | null;
  readonly texts: readonly Text[];
}

export type FindArticle = (doc: Document) => Promise<Article | null>;

/**
 * The size above which an article is found by its paragraphs. Readability would keep the browser busy for too long on
 * such a page. `LARGEST` is in elements, `LONGEST` is in characters (a book on one page).
 */
const LARGEST = 6000;
const LONGEST = 200_000;

/**
 * Finds the article of a page. The headline comes first, and parts that only look like the article are left out.
 * Returns null if there is no article. The page is not changed and can run between the steps. Text that the page
 * removes meanwhile is left out.
 */
export async function findArticle(doc: Document, isLarge = isTooLarge(doc)): Promise<Article | null> {
  await nextTurn();
  const found = isLarge ? wholeOf(doc, findByParagraphs(doc)) : await findByLibrary(doc);
  if (!found) return null;
  await nextTurn();
  const story = isLarge ? found.texts : putBack(found.texts);
  const headline = findHeadline(doc, found.title, story);
  await nextTurn();
  const known = new Set(story);
  const besides = headline.filter((text) => !known.has(text));
  // The texts of one whole element are already in page order.
  const isSorted = isLarge && besides.length === 0;
  const texts = isSorted ? story : sortInPageOrder([...besides, ...story], (text) => text);
  const trimmed = await trimStory(texts, new Set(headline), found.byline);
  await nextTurn();
  return { ...found, texts: trimmed };
}

/** Returns all text of an element as the article of the page. */
function wholeOf({ title }: Document, element: Element | null): Article | null {
  return element && { title, byline: null, date: null, texts: textsIn(element) };
}

/**
 * Returns whether a page is too large for Readability. The content of scripts and styles does not count as text of the
 * page.
 */
function isTooLarge(doc: Document): boolean {
  if (doc.getElementsByTagName('*').length > LARGEST) return true;
  let length = 0;
  for (const { data, parentElement } of textsIn(doc.body))
    if (!/^(?:SCRIPT|STYLE|NOSCRIPT|TEMPLATE)$/.test(parentElement?.tagName ?? '')) length += data.length;
  return length > LONGEST;
}

/**
 * Finds the article with Readability on a copy of the page. The texts of the copy are mapped back to the page's own
 * texts by walking through the page and its copy in parallel.
 */
async function findByLibrary(doc: Document): Promise<Article | null> {
  const copy = doc.cloneNode(true) as Document;
  const original = new Map<Node, Text>();
  const here = doc.createTreeWalker(doc, NodeFilter.SHOW_TEXT);
  const there = copy.createTreeWalker(copy, NodeFilter.SHOW_TEXT);
  while (here.nextNode() && there.nextNode()) original.set(there.currentNode, here.currentNode as Text);
  const parts = numberParts(doc, copy);
  await nextTurn();
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

/** The attribute that numbers the elements of the copy. No page uses an attribute of this name. */
const NUMBER = 'data-part-of-page';

/** Numbers the elements of the copy, and returns the page’s elements in the same order. */
function numberParts(doc: Document, copy: Document): Element[] {
  for (const [i, element] of [...copy.body.getElementsByTagName('*')].entries())
    if (element.tagName !== 'IMG') element.setAttribute(NUMBER, `${i}`);
  return [...doc.body.getElementsByTagName('*')];
}

/**
 * Maps texts of the copy back to the page. Readability creates some parts anew, and all parts when it tries a second
 * time. A text in a new part is mapped to the text with the same words in the element with the same number, or else to
 * the first text with the same words.
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
 * Returns the texts of the headline. Readability leaves out the heading that repeats the title. If no heading repeats
 * it, the headline is the only h1 of the main part above the story.
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
  // A bar that stays in view may show the title too, before the heading above the story.
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
