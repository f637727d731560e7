import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';

/** The first piece, in UTF-16 units; the next are longer or shorter, as the browser takes its time. */
const PIECE = 1024;
const SHORTEST = 256;
const LONGEST = 16_384;
/** How long a piece may take, in milliseconds: some pages take a browser a second for a thousand letters. */
const SOON = 4;
const LATE = 16;

/** Elements are counted so often, in milliseconds: that takes a moment itself. */
const COUNTED = 250;
/** As many as tags may be read (`expectFewTags`). Few tags may become many elements: each block opens again the elements left open before. */
const MOST = 1_000_000;

/**
 * Parses a page piece by piece. Nothing of it is run or loaded, as by `DOMParser`, which would keep the page busy from its beginning to its
 * end: a minute for 400 KB that are made for it. Throws `FileFault`.
 */
export function* parseHtml(html: string): Generator<void, Document> {
  const doc = document.implementation.createHTMLDocument('');
  doc.open();
  let size = PIECE;
  let counted = performance.now();
  for (let at = 0; at < html.length; ) {
    // Not between the two halves of a letter.
    const end = at + size + (/[\ud800-\udbff]/.test(html[at + size - 1] ?? '') ? 1 : 0);
    const start = performance.now();
    doc.write(html.slice(at, end));
    const took = performance.now() - start;
    if (took < SOON) size = Math.min(LONGEST, size * 2);
    else if (took > LATE) size = Math.max(SHORTEST, Math.round(size / 2));
    at = end;
    if (start - counted > COUNTED) {
      if (doc.getElementsByTagName('*').length > MOST) throw new FileFault(say('files.tooManyTags'));
      counted = performance.now();
    }
    yield;
  }
  doc.close();
  return doc;
}
