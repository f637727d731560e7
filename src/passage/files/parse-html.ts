import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';

/**
 * The size of the first piece, in UTF-16 units. The next pieces are longer or shorter, depending on the time the
 * browser takes.
 */
const PIECE = 1024;
const SHORTEST = 256;
const LONGEST = 16_384;
/** The time that a piece may take, in milliseconds. For some pages, a browser takes a second for a thousand letters. */
const SOON = 4;
const LATE = 16;

/** The interval at which elements are counted, in milliseconds. Counting takes a moment itself. */
const COUNTED = 250;
/**
 * The most elements that a page may have, equal to the number of tags that may be read (`expectFewTags`). Few tags may
 * become many elements, because each block opens again the elements left open before.
 */
const MOST = 1_000_000;

/**
 * Parses a page piece by piece. As with `DOMParser`, nothing in the page is run or loaded. `DOMParser` would keep the
 * browser busy until the whole page is parsed: a minute for 400 KB made for that purpose. Throws `FileFault`.
 */
export function* parseHtml(html: string): Generator<void, Document> {
  const doc = document.implementation.createHTMLDocument('');
  doc.open();
  let size = PIECE;
  let counted = performance.now();
  for (let at = 0; at < html.length; ) {
    // A piece does not end between the two halves of a surrogate pair.
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
