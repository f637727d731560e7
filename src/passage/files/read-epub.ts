import { say } from '../../wording/say.ts';
import { decodeText } from './decode-text.ts';
import { expectFewTags } from './expect-few-tags.ts';
import { lookForDepth } from './expect-shallow.ts';
import { FileFault } from './file-fault.ts';
import type { FileTime } from './file-time.ts';
import { findChapters, findFirstChapter } from './find-chapters.ts';
import type { OpenedBook } from './opened-file.ts';
import { parseHtml } from './parse-html.ts';
import { unpackZip } from './unpack-zip.ts';

const NOT_TEXT = /\.(jpe?g|png|gif|svg|webp|avif|css|js|[ot]tf|woff2?|mp[34]|m4[abv]|ogg|wav|pdf)$/i;

/**
 * The most elements that the package of a book may have. A long book has some hundred chapters, each named two or three
 * times in the package.
 */
const MOST_ITEMS = 10_000;

/** Reads the chapters of a book in EPUB 2 or 3 (W3C EPUB 3.3: container, package, spine). Rejects with `FileFault`. */
export async function readEpub(bytes: Uint8Array, name: string, time: FileTime): Promise<OpenedBook> {
  const { parts } = await unpackZip(bytes, (part) => !NOT_TEXT.test(part), time);
  expectFewTags(parts.values());
  const container = parseXml(parts.get('META-INF/container.xml'));
  const packagePath = container?.getElementsByTagNameNS('*', 'rootfile')[0]?.getAttribute('full-path');
  const book = packagePath ? parseXml(parts.get(packagePath)) : null;
  if (!packagePath || !book) throw new FileFault(say('files.damagedBook'));
  if (book.getElementsByTagName('*').length > MOST_ITEMS) throw new FileFault(say('files.tooManyParts'));
  const items = new Map(
    [...book.getElementsByTagNameNS('*', 'item')].map((item) => {
      const path = resolvePath(packagePath, item.getAttribute('href') ?? '');
      return [
        item.getAttribute('id') ?? '',
        { path, properties: item.getAttribute('properties') ?? '' },
      ] as const;
    }),
  );
  const spine = [...book.getElementsByTagNameNS('*', 'itemref')]
    .filter((entry) => entry.getAttribute('linear') !== 'no')
    .map((entry) => items.get(entry.getAttribute('idref') ?? ''))
    .filter((item) => item !== undefined && !/\bnav\b/.test(item.properties))
    .map((item) => item!.path);
  const locked = new Set(
    [...readText(parts.get('META-INF/encryption.xml')).matchAll(/URI="([^"]*)"/g)].map(([, path]) => path),
  );
  if (spine.some((path) => locked.has(path))) throw new FileFault(say('files.lockedBook'));
  const contents = await readContents([...items.values()], parts, time);
  const documents = [...new Set(spine)].flatMap((path) => {
    const part = parts.get(path);
    return part ? [{ html: openTags(readText(part)), labels: contents.get(path) ?? [] }] : [];
  });
  const chapters = await findChapters(documents, time);
  if (chapters.length === 0) throw new FileFault(say('files.noWordsInBook'));
  const about = (what: string): string =>
    book.getElementsByTagNameNS('*', what)[0]?.textContent?.trim() ?? '';
  return {
    title: about('title') || name,
    byline: about('creator') || null,
    chapters,
    first: findFirstChapter(chapters),
  };
}

/** Returns the names of each document in the table of contents. A document with several chapters has several names. */
async function readContents(
  items: readonly { readonly path: string; readonly properties: string }[],
  parts: ReadonlyMap<string, Uint8Array>,
  time: FileTime,
): Promise<Map<string, string[]>> {
  const contents = new Map<string, string[]>();
  const add = (from: string, href: string | null | undefined, label: string | null | undefined): void => {
    const path = resolvePath(from, href ?? '');
    const text = (label ?? '').replace(/\s+/g, ' ').trim();
    if (text === '') return;
    const labels = contents.get(path);
    if (labels) labels.push(text);
    else contents.set(path, [text]);
  };
  const nav = items.find(({ properties }) => /\bnav\b/.test(properties));
  if (nav) {
    const html = openTags(readText(parts.get(nav.path)));
    await time.run(lookForDepth(html));
    const doc = await time.run(parseHtml(html));
    const list =
      [...doc.querySelectorAll('nav')].find((own) => own.getAttribute('epub:type') === 'toc') ?? doc;
    for (const link of list.querySelectorAll('a[href]'))
      add(nav.path, link.getAttribute('href'), link.textContent);
  }
  const ncx = contents.size === 0 && items.find(({ path }) => /\.ncx$/i.test(path));
  if (ncx)
    for (const point of parseXml(parts.get(ncx.path))?.getElementsByTagNameNS('*', 'navPoint') ?? [])
      add(
        ncx.path,
        point.getElementsByTagNameNS('*', 'content')[0]?.getAttribute('src'),
        point.getElementsByTagNameNS('*', 'text')[0]?.textContent,
      );
  return contents;
}

/** The greatest length of the parts that describe a book, in bytes. The browser reads each part at once. */
const LONGEST_XML = 5_000_000;

/**
 * Parses a part without its document type, whose entities could be made to grow without end. Returns null if the part
 * is not XML.
 */
function parseXml(part: Uint8Array | undefined): Document | null {
  if (!part) return null;
  if (part.length > LONGEST_XML) throw new FileFault(say('files.tooManyParts'));
  const text = readText(part).replace(/<!DOCTYPE[^>[]*(\[[^\]]*\])?[^>]*>/gi, '');
  if (/<!(DOCTYPE|ENTITY)/i.test(text)) return null;
  const doc = new DOMParser().parseFromString(text, 'application/xml');
  return doc.getElementsByTagName('parsererror').length > 0 ? null : doc;
}

/**
 * Writes `<title/>` and the like with an end tag. Such an element is empty in a book, but stays open in a web page. The
 * documents of a book are read as web pages, because that forgives every fault.
 */
function openTags(xhtml: string): string {
  return xhtml
    .replace(/^[^<]*<\?xml[^>]*>/, '')
    .replace(
      /<(?!(?:br|hr|img|input|meta|link|col|wbr|area|base|embed|source|track)\b)([a-z][\w:-]*)((?:\s[^<>]*?)?)\/>/gi,
      '<$1$2></$1>',
    );
}

function readText(part: Uint8Array | undefined): string {
  return part ? decodeText(part) : '';
}

/** Resolves a path within a book: text/one.xhtml from OEBPS/book.opf is OEBPS/text/one.xhtml. */
function resolvePath(from: string, href: string): string {
  try {
    return decodeURIComponent(
      new URL(href.replace(/[#?].*$/, ''), new URL(from, 'https://book.example/')).pathname.slice(1),
    );
  } catch {
    return '';
  }
}
