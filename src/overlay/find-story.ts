import type { Article, FindArticle } from './find-article.ts';
import { findMainElement } from './find-main-element.ts';
import { own } from './own.ts';
import { textsIn } from './texts-in.ts';

/** The main story of a page, as the text nodes that are part of it. */
export interface Story {
  readonly title: string;
  readonly byline: string | null;
  /** The publication date, as the page gives it. */
  readonly date: string | null;
  /**
   * Whether a text is part of the story. A text that was added later is part of it if the text is inside the story and
   * not in a part that was left out.
   */
  has(node: Node): boolean;
  /** Whether the page has replaced the story with another. */
  isGone(): boolean;
}

/** The least length of a story in words. A shorter story is no more certain than the whole page. */
const ENOUGH = 60;

/**
 * Finds the main story with the function that `loadFindArticle` loads. If loading fails, takes the page's main element.
 * Returns null when there is no story, or too little of it. The page is not changed.
 */
export async function findStory(
  doc: Document,
  loadFindArticle: () => Promise<FindArticle>,
): Promise<Story | null> {
  if (!hasEnough(textsIn(doc.body))) return null;
  const findArticle = await loadFindArticle().catch(() => findMain);
  const found = await findArticle(doc);
  if (!found || !hasEnough(found.texts)) return null;
  return makeStory(found);
}

async function findMain(doc: Document): Promise<Article | null> {
  const main = findMainElement(doc);
  return main && { title: doc.title, byline: null, date: null, texts: textsIn(main) };
}

function makeStory({ title, byline, date, texts }: Article): Story {
  const kept = new WeakSet<Node>(texts);
  const root = rootOf(texts.filter(hasWords));
  const holders = new WeakSet<Node>();
  for (const text of texts) {
    for (let at: Node | null = text; at && at !== root && !holders.has(at); at = parentOf(at))
      holders.add(at);
  }
  const leftOut = new WeakSet<Node>();
  for (const text of textsIn(root)) {
    if (kept.has(text) || !hasWords(text)) continue;
    let top: Node = text;
    for (let up = parentOf(top); up && up !== root && !holders.has(up); up = parentOf(up)) top = up;
    leftOut.add(top);
  }
  return {
    title,
    byline,
    date,
    has(node) {
      if (kept.has(node)) return true;
      for (let at: Node | undefined = node; at; at = parentOf(at) ?? (at as Partial<ShadowRoot>).host) {
        if (leftOut.has(at)) return false;
        if (at === root) return true;
      }
      return false;
    },
    isGone: () => !own(root).isConnected || !textsIn(root).some((text) => kept.has(text)),
  };
}

/**
 * Returns the smallest element with nearly all of the story. A line of the story outside this element is kept by
 * itself.
 */
function rootOf(texts: readonly Text[]): Element {
  const NEARLY_ALL = 0.9;
  const letters = new Map<Element, number>();
  for (const { data, parentElement } of texts) {
    const { length } = data.trim();
    for (let at = parentElement; at; at = own(at).parentElement)
      letters.set(at, (letters.get(at) ?? 0) + length);
  }
  let root: Element = texts[0]!.ownerDocument.body;
  const enough = (letters.get(root) ?? 0) * NEARLY_ALL;
  for (;;) {
    const within = [...own(root).children].find((child) => (letters.get(child) ?? 0) >= enough);
    if (!within) return root;
    root = within;
  }
}

function parentOf(node: Node): Node | null {
  return own(node).parentNode;
}

function hasWords({ data }: Text): boolean {
  return /\p{L}/u.test(data);
}

function hasEnough(texts: readonly Text[]): boolean {
  let words = 0;
  for (const { data } of texts) for (const _ of data.matchAll(/\p{L}+/gu)) if (++words >= ENOUGH) return true;
  return false;
}
