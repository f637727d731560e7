import type { ScopeKind } from '../contract/page-contract.ts';
import type { FindArticle } from './find-article.ts';
import type { WordPlace } from './find-places.ts';
import { findStory, type Story } from './find-story.ts';
import type { TextBlock } from './text-blocks.ts';

/** The part of a page's text that is checked. */
export interface Scope {
  readonly kind: ScopeKind;
  /** The title and the author of the story. For any other text, the title is the page's title and the author is null. */
  readonly title: string;
  readonly byline: string | null;
  readonly date: string | null;
  has(node: Node): boolean;
  /** Returns a block without the texts outside the scope, or null when nothing of the block is left. */
  narrow(block: TextBlock): TextBlock | null;
  /** Whether a word is in the scope. Needed when only a part of a block may be in the scope. */
  readonly covers?: (place: WordPlace) => boolean;
  /** Whether the page has changed so much that the scope should be chosen again. */
  isGone(): boolean;
}

/**
 * Returns the text to be checked: the wanted scope, or by default the main story. Returns the whole page if there is no
 * story. The selection is read at the time of the call. If nothing is selected then, the scope has no words.
 */
export async function chooseScope(
  doc: Document,
  wanted: ScopeKind | null,
  loadFindArticle: () => Promise<FindArticle>,
): Promise<Scope> {
  if (wanted === 'selection') return ofSelection(doc);
  const story = wanted === 'page' ? null : await findStory(doc, loadFindArticle);
  return story ? ofStory(story) : wholePage(doc, wanted === null);
}

/** Whether something is selected in a document. */
export function hasSelection(doc: Document): boolean {
  return doc.getSelection()?.type === 'Range';
}

/**
 * Returns the scope of a whole page. A story that comes late is looked for again only when the page has a new address
 * or has grown by half, so that the search runs rarely.
 */
export function wholePage(doc: Document, hopesForStory = false): Scope {
  const elements = doc.getElementsByTagName('*');
  const address = doc.URL;
  const large = elements.length * 1.5 + 20;
  return {
    kind: 'page',
    title: doc.title,
    byline: null,
    date: null,
    has: () => true,
    narrow: (block) => block,
    isGone: () => hopesForStory && (doc.URL !== address || elements.length > large),
  };
}

function ofStory({ title, byline, date, has, isGone }: Story): Scope {
  return { kind: 'story', title, byline, date, has, narrow: (block) => narrow(block, has), isGone };
}

function ofSelection(doc: Document): Scope {
  const selection = doc.getSelection();
  const ranges = Array.from({ length: selection?.rangeCount ?? 0 }, (_, i) =>
    selection!.getRangeAt(i).cloneRange(),
  );
  const isSelected = (node: Node): boolean => ranges.some((range) => range.intersectsNode(node));
  return {
    kind: 'selection',
    title: doc.title,
    byline: null,
    date: null,
    has: isSelected,
    narrow: (block) => narrow(block, isSelected),
    covers: ({ ranges: [first] }) => first !== undefined && ranges.some((range) => meets(range, first)),
    isGone: () => ranges.length > 0 && ranges.every(({ collapsed }) => collapsed),
  };
}

/** Whether a piece of text is in a range, at least in part. */
function meets(range: Range, { startContainer, startOffset, endOffset }: StaticRange): boolean {
  return (
    range.comparePoint(startContainer, startOffset + 1) <= 0 &&
    range.comparePoint(startContainer, Math.max(endOffset - 1, startOffset)) >= 0
  );
}

/**
 * Narrows a block to the texts in the scope. Keeps blanks between words, and keeps the texts on both sides of a removed
 * text apart.
 */
function narrow({ nodes, parted, ...rest }: TextBlock, has: (node: Text) => boolean): TextBlock | null {
  const kept: Text[] = [];
  const apart = new Set(parted);
  let cut = false;
  let words = false;
  for (const node of nodes) {
    const blank = !/\S/.test(node.data);
    if (!blank && !has(node)) {
      cut = true;
      continue;
    }
    if (cut) apart.add(node);
    cut = false;
    words ||= !blank;
    kept.push(node);
  }
  return words ? { ...rest, nodes: kept, parted: apart } : null;
}
