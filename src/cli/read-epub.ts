import { type Document, type Element, Window } from 'happy-dom';
import { decodeText } from '../passage/files/decode-text.ts';
import { expectShallow } from '../passage/files/expect-shallow.ts';
import { FileFault } from '../passage/files/file-fault.ts';
import { unpackZip } from '../passage/files/unpack-zip.ts';
import type { OpenedText } from './opened-text.ts';
import { readHtml } from './read-html.ts';

const NOT_TEXT = /\.(jpe?g|png|gif|svg|webp|avif|css|js|[ot]tf|woff2?|mp[34]|m4[abv]|ogg|wav|pdf)$/i;

/**
 * The most tags in a package file. A long book has a few hundred chapters, each named two or three times in the package
 * file.
 */
const MOST_TAGS = 10_000;

/**
 * Returns the text of an EPUB 2 or 3 book in the order of its spine (W3C EPUB 3.3: container, package, spine). The
 * table of contents is left out. Rejects with `FileFault`.
 */
export async function readEpub(bytes: Uint8Array): Promise<OpenedText> {
  const { parts } = await unpackZip(bytes, (part) => !NOT_TEXT.test(part));
  const read = (path: string): string => decodeText(parts.get(path) ?? new Uint8Array());
  const [rootfile] = elementsOf(read('META-INF/container.xml'), 'rootfile');
  const packagePath = rootfile?.getAttribute('full-path') ?? '';
  const about = read(packagePath);
  if ((about.match(/</g)?.length ?? 0) > MOST_TAGS)
    throw new FileFault('This book lists more parts than any book has.');
  const items = new Map(elementsOf(about, 'item').map((item) => [item.getAttribute('id'), item]));
  const spine = elementsOf(about, 'itemref')
    .filter((entry) => entry.getAttribute('linear') !== 'no')
    .map((entry) => items.get(entry.getAttribute('idref')))
    .filter((item) => item !== undefined && !/\bnav\b/.test(item.getAttribute('properties') ?? ''))
    .map((item) => resolveHref(packagePath, item!.getAttribute('href') ?? ''));
  const locked = read('META-INF/encryption.xml');
  if (spine.some((path) => locked.includes(`URI="${path}"`)))
    throw new FileFault('This book is locked by its seller, so only their reader opens it.');
  const chapters = [...new Set(spine)].filter((path) => parts.has(path));
  if (chapters.length === 0) throw new FileFault('This book is damaged. Get it again.');
  return {
    title: elementsOf(about, 'title')[0]?.textContent.trim() ?? '',
    text: chapters.map((path) => readHtml(openTags(read(path))).text).join('\n\n'),
  };
}

/**
 * Finds elements by local name, since packages use different prefixes. Removes the document type first, since its
 * entities could expand without end.
 */
function elementsOf(xml: string, name: string): Element[] {
  expectShallow(xml, true);
  const window = new Window();
  try {
    const bare = xml.replace(/<!DOCTYPE[^>[]*(\[[^\]]*\])?[^>]*>/gi, '');
    const document: Document = new window.DOMParser().parseFromString(bare, 'application/xml');
    return [...document.getElementsByTagName('*')].filter(({ localName }) => localName === name);
  } finally {
    window.close();
  }
}

/**
 * Expands self-closing tags. `<title/>` is empty in a book, but it opens an element in a web page, and the documents
 * are read as web pages.
 */
function openTags(xhtml: string): string {
  return xhtml.replace(
    /<(?!(?:br|hr|img|input|meta|link|col|wbr|area|base|embed|source|track)\b)([a-z][\w:-]*)((?:\s[^<>]*?)?)\/>/gi,
    '<$1$2></$1>',
  );
}

/** Resolves a link in the book: text/one.xhtml from OEBPS/book.opf is OEBPS/text/one.xhtml. */
function resolveHref(from: string, href: string): string {
  const base = new URL(from, 'https://book.example/');
  const path = href.replace(/[#?].*$/, '');
  return URL.canParse(path, base) ? decodeURI(new URL(path, base).pathname.slice(1)) : '';
}
