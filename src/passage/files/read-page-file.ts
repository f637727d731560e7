import { say } from '../../wording/say.ts';
import { writeLines } from '../passage-lines.ts';
import { decodeText } from './decode-text.ts';
import { expectFewTags } from './expect-few-tags.ts';
import { lookForDepth } from './expect-shallow.ts';
import { FileFault } from './file-fault.ts';
import type { FileTime } from './file-time.ts';
import type { FoundLine, OpenedText } from './opened-file.ts';
import { parseHtml } from './parse-html.ts';
import { countPictures, findHtmlLines } from './read-html-lines.ts';
import { writePageDate } from './write-page-date.ts';

/** The fewest words that a story must have. A shorter story is no more certain than the page it is on. */
const ENOUGH = 100;

/**
 * The most elements of a page in which a story is looked for. The search would keep the browser busy if there were
 * more.
 */
const LARGEST = 20_000;
/**
 * The most letters of all elements, where each letter counts once for every element around it. More letters would also
 * keep the browser busy, since the search asks for the text of each element.
 */
const MOST_TEXT = 50_000_000;

/**
 * Reads the text of a saved web page: its main story if there is one, else all of its lines. Nothing in the page is run
 * or loaded. Rejects with `FileFault`.
 */
export async function readPageFile(bytes: Uint8Array, name: string, time: FileTime): Promise<OpenedText> {
  expectFewTags([bytes], say('files.tooManyTags'));
  const start = new TextDecoder('windows-1252').decode(bytes.subarray(0, 2048));
  const html = decodeText(bytes, /charset\s*=\s*["']?\s*([\w-]+)/i.exec(start)?.[1] ?? null);
  await time.run(lookForDepth(html));
  const doc = await time.run(parseHtml(html));
  const story = await readArticle(doc);
  const root = story?.root ?? doc.body;
  const pictures = countPictures(root);
  const lines = withHeadline(doc, story, await time.run(findHtmlLines(root)));
  if (lines.length === 0) throw new FileFault(say('files.noWordsInPage'));
  return {
    title: story?.title || doc.title.trim() || name,
    text: writeLines(lines),
    url: findAddress(doc),
    byline: story?.byline || contentOf(doc, 'meta[name="author" i]'),
    date: writePageDate(
      story?.date ??
        contentOf(doc, DATE) ??
        doc.querySelector('time[datetime]')?.getAttribute('datetime') ??
        null,
    ),
    leftOut: { pictures, footnotes: 0 },
  };
}

const DATE = 'meta[property="article:published_time"], meta[name="date" i], meta[itemprop="datePublished"]';

interface FoundArticle {
  readonly root: Element;
  readonly title: string;
  readonly byline: string | null;
  readonly date: string | null;
}

async function readArticle(doc: Document): Promise<FoundArticle | null> {
  if (doc.getElementsByTagName('*').length > LARGEST || nestedText(doc) > MOST_TEXT) return null;
  const { Readability } = await import('@mozilla/readability');
  const copy = doc.cloneNode(true) as Document;
  try {
    const found = new Readability<Node>(copy, { serializer: (node) => node }).parse();
    const words = found?.textContent?.match(/\p{L}+/gu)?.length ?? 0;
    if (!found?.content || words < ENOUGH) return null;
    const { title, byline, publishedTime } = found;
    return {
      root: found.content as Element,
      title: title?.trim() ?? '',
      byline: byline?.trim() ?? null,
      date: publishedTime ?? null,
    };
  } catch {
    return null;
  }
}

/** Counts the letters of all elements. The letters of nested elements are included in each element around them. */
function nestedText(doc: Document): number {
  const depths = new Map<Node, number>();
  const walker = doc.createTreeWalker(doc, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
  let letters = 0;
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const depth = (depths.get(node.parentNode!) ?? 0) + 1;
    if (node.nodeType === Node.TEXT_NODE) letters += depth * node.nodeValue!.length;
    else depths.set(node, depth);
  }
  return letters;
}

/**
 * Adds the heading with the title to the lines of a story. The heading is part of the story, though the search for the
 * story leaves it out.
 */
function withHeadline(doc: Document, story: FoundArticle | null, lines: FoundLine[]): readonly FoundLine[] {
  if (!story) return lines;
  const heading = [...doc.querySelectorAll('h1, h2')]
    .map(({ textContent }) => (textContent ?? '').replace(/\s+/g, ' ').trim())
    .find(
      (says) => says !== '' && (says === story.title || (says.length > 8 && story.title.startsWith(says))),
    );
  if (!heading || lines.slice(0, 3).some(({ text }) => text === heading)) return lines;
  return [{ kind: 'heading', level: 1, text: heading }, ...lines];
}

function findAddress(doc: Document): string | null {
  const address =
    doc.querySelector('link[rel~="canonical" i]')?.getAttribute('href') ??
    contentOf(doc, 'meta[property="og:url"]');
  return address !== null && /^https?:\/\//i.test(address) && URL.canParse(address) ? address : null;
}

function contentOf(doc: Document, selector: string): string | null {
  return doc.querySelector(selector)?.getAttribute('content')?.trim() || null;
}
