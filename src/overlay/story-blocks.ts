import { own } from './own.ts';
import { workInSlices } from './work-in-slices.ts';

/**
 * The position of a block in its story: above the headline, between the headline and the first paragraph, among the
 * paragraphs, or after the last paragraph.
 */
export type Place = 'above' | 'under' | 'within' | 'below';

/** A paragraph, heading, entry or caption of a found story. */
export interface StoryBlock {
  readonly texts: readonly Text[];
  /** The element that contains the block as its line. */
  readonly line: Element;
  /** The text of the block, with runs of blanks made one. */
  readonly says: string;
  readonly words: number;
  /** The share of the block's letters in links, from 0 to 1. */
  readonly linked: number;
  readonly isHeading: boolean;
  readonly isHeadline: boolean;
  readonly place: Place;
  /**
   * The words in the names (class, id, itemprop, rel, role) of the surrounding elements that hold no more than a fifth
   * of the story.
   */
  readonly names: ReadonlySet<string>;
  /** The words in the names of the surrounding elements that hold only this line or little more, at most `FEW` words. */
  readonly marks: ReadonlySet<string>;
  /** Tags of the elements whose names are in `names`. */
  readonly tags: ReadonlySet<string>;
}

/** Elements that only style pieces of a line, or give the kind of a piece. */
const INLINE = new Set(
  'A ABBR ACRONYM B BDI BDO BIG CITE DATA DEL DFN EM FONT I INS LABEL MARK Q S SMALL SPAN STRIKE STRONG SUB SUP TIME TT U VAR WBR'.split(
    ' ',
  ),
);
/** The greatest share of the story’s words in a part that counts as an insertion because of its name. */
const SMALL = 0.2;
/** The greatest share of the story’s words before a headline. A heading with more of the story before it is no headline. */
const BEFORE = 0.15;
/** The greatest number of words in an element whose names are in `marks`. */
const FEW = 20;
/** The least number of words in a paragraph, and the least number if it is a whole sentence. */
const LONG = 25;
const SENTENCE = 9;

/**
 * Cuts the texts of a story, which are in page order, into blocks. `headline` has the texts of the story's heading. The
 * page can run meanwhile, and texts that it removes are left out.
 */
export async function cutStory(texts: readonly Text[], headline: ReadonlySet<Text>): Promise<StoryBlock[]> {
  const lines: Line[] = [];
  await workInSlices(joinLines(texts), ({ line, texts }) => {
    const says = squeeze(texts.map(({ data }) => data).join(''));
    lines.push({ line, texts, says, words: countWords(says), linked: shareLinked(texts) });
  });
  const isHeadline = lines.map(({ texts }) => texts.some((text) => headline.has(text)));
  const isParagraph = lines.map((one, i) => !isHeadline[i] && reads(one));
  const wordsOf = (some: readonly Line[]): number => some.reduce((sum, { words }) => sum + words, 0);
  const said = isHeadline.indexOf(true);
  const before = lines.filter((_, i) => i < said && isParagraph[i]);
  const head = wordsOf(before) > wordsOf(lines) * BEFORE ? -1 : said;
  const first = isParagraph.indexOf(true, head + 1);
  const last = isParagraph.lastIndexOf(true);
  const around = nameSmallParts(lines);
  return lines.map((one, i) => ({
    ...one,
    ...around(one.line, one.texts),
    isHeading: /^H[1-6]$/.test(one.line.tagName),
    isHeadline: isHeadline[i]!,
    place: first < 0 ? 'within' : i < head ? 'above' : i < first ? 'under' : i > last ? 'below' : 'within',
  }));
}

type Line = Pick<StoryBlock, 'line' | 'texts' | 'says' | 'words' | 'linked'>;

function reads({ line, says, words, linked }: Line): boolean {
  if (linked > 0.5 || /^(?:H[1-6]|FIGCAPTION)$/.test(line.tagName)) return false;
  return words >= LONG || (words >= SENTENCE && /[.!?:]["'”’)\]]*$/.test(says));
}

function joinLines(texts: readonly Text[]): { line: Element; texts: Text[] }[] {
  const lines: { line: Element; texts: Text[] }[] = [];
  for (const text of texts) {
    if (!text.isConnected) continue;
    const line = lineOf(text);
    const last = lines.at(-1);
    if (last?.line === line && !isParted(last.texts.at(-1)!, text)) last.texts.push(text);
    else if (/\S/.test(text.data)) lines.push({ line, texts: [text] });
  }
  return lines;
}

/** Returns the nearest element that is not an inline piece of a line. */
function lineOf(text: Text): Element {
  let at = text.parentElement!;
  for (;;) {
    const { parentElement, tagName } = own(at);
    if (!INLINE.has(tagName) || !parentElement) return at;
    at = parentElement;
  }
}

/** Returns whether there is a line break or a block between two texts of one element. */
function isParted(before: Text, after: Text): boolean {
  const walker = before.ownerDocument.createTreeWalker(before.ownerDocument, NodeFilter.SHOW_ALL);
  walker.currentNode = before;
  for (let at = walker.nextNode(); at && at !== after; at = walker.nextNode())
    if (at.nodeType === Node.ELEMENT_NODE && !INLINE.has(own(at as Element).tagName)) return true;
  return false;
}

function shareLinked(texts: readonly Text[]): number {
  let letters = 0;
  let linked = 0;
  for (const { data, parentElement } of texts) {
    const { length } = data.trim();
    letters += length;
    if (parentElement?.closest('a[href], button, [role="button"]')) linked += length;
  }
  return letters === 0 ? 0 : linked / letters;
}

/** Returns the names of the elements around a line that hold a small part of all words. */
function nameSmallParts(lines: readonly Line[]) {
  const held = new Map<Element, number>();
  let all = 0;
  for (const { line, words } of lines) {
    all += words;
    for (let at: Element | null = line; at; at = own(at).parentElement)
      held.set(at, (held.get(at) ?? 0) + words);
  }
  const most = all * SMALL;
  return (line: Element, [first]: readonly Text[]): Pick<StoryBlock, 'names' | 'marks' | 'tags'> => {
    const names = new Set<string>();
    const marks = new Set<string>();
    const tags = new Set<string>();
    for (let at: Element | null = first!.parentElement; at; at = own(at).parentElement) {
      if ((held.get(at) ?? 0) > most && at !== line) break;
      const { tagName } = own(at);
      if (tagName === 'BODY') break;
      tags.add(tagName);
      const isOwn = (held.get(at) ?? 0) <= FEW;
      for (const name of namesOf(at)) {
        names.add(name);
        if (isOwn) marks.add(name);
      }
    }
    return { names, marks, tags };
  };
}

/**
 * Returns the words of an element’s names in lower case: `relatedLinks c-author__bio` gives related, links, c, author,
 * bio.
 */
export function namesOf(element: Element): string[] {
  const said = ['class', 'id', 'itemprop', 'rel', 'role', 'data-component', 'data-testid'].map((name) =>
    element.getAttribute(name),
  );
  return said
    .join(' ')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter(Boolean);
}

export function squeeze(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

export function countWords(text: string): number {
  return text.match(/\p{L}+(?:['’]\p{L}+)*/gu)?.length ?? 0;
}
