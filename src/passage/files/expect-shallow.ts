import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';
import { finish } from './file-time.ts';

/**
 * The deepest nesting of elements in a page. No page that anybody wrote is nested so deep, and browsers themselves cut
 * off at some 500 levels.
 */
const DEEPEST = 1000;

/**
 * Elements without an end tag, and elements whose end tag may be left out. The latter are nested only with other
 * elements between them.
 */
const NOT_COUNTED = new Set(
  'area base br col embed hr img input link meta param source track wbr p li dt dd rt rp option optgroup colgroup caption thead tbody tfoot tr td th html head body'.split(
    ' ',
  ),
);
/** Elements within which `/>` ends an element. In the page itself, `/>` does not. */
const FOREIGN = new Set(['svg', 'math']);
/** Elements that cannot be within `svg` or `math`, and therefore end these elements (WHATWG HTML, 13.2.6.5). */
const BREAKS_OUT = new Set(
  'b big blockquote center code div dl em font h1 h2 h3 h4 h5 h6 i menu nobr ol pre ruby s small span strong strike sub sup table tt u ul var'.split(
    ' ',
  ),
);
/** Elements whose content is text only, even if the content looks like tags. */
const TEXT = new Set(['script', 'style', 'textarea', 'title', 'xmp', 'iframe', 'noembed', 'noframes']);

/**
 * Elements that a browser opens again in the next block if they were not closed in the block before. Only one `a` and
 * one `nobr` is opened again, so these are left out (WHATWG HTML, 13.2.4.3).
 */
const FORMATTING = new Set('b big code em font i s small strike strong tt u'.split(' '));
/** The most identical elements that are kept open. */
const ALIKE = 3;
/** Elements that limit end tags. An end tag within such an element ends nothing that was opened before that element. */
const MARKERS = new Set('applet caption marquee object table template'.split(' '));
/** The most elements that a few tags may become. No page that anybody wrote comes near this number. */
const MOST_OPENED = 2_000_000;

/**
 * Counts the elements that a browser may create from elements left open. The count may be too high. A page of 60 KB can
 * become millions of elements, which takes the browser minutes.
 */
function countOpened(): (tag: Tag) => number {
  const open: Tag[] = [];
  let floor = 0;
  let opened = 0;
  return (tag) => {
    if (tag.closes) {
      const at = open.findLastIndex(({ name }) => name === tag.name);
      if (at >= floor) open.splice(at, 1);
      return opened;
    }
    opened += open.length;
    if (MARKERS.has(tag.name)) floor = open.length;
    if (!FORMATTING.has(tag.name)) return opened;
    const alike = open.filter(({ text }) => text === tag.text);
    if (alike.length === ALIKE) open.splice(open.indexOf(alike[0]!), 1);
    open.push(tag);
    floor = Math.min(floor, open.length);
    return opened;
  };
}

/**
 * Checks that the elements of a page are not nested deeper than in real pages, and that a browser does not create many
 * more elements than were written. With `isXml`, each element has its end, and `/>` is an end. Yields once for each
 * tag. Throws `FileFault`.
 */
export function* lookForDepth(html: string, isXml = false): Generator<void, void> {
  let depth = 0;
  let foreign = 0;
  const opened = countOpened();
  for (const tag of findTags(html, (text) => !isXml && foreign === 0 && TEXT.has(text))) {
    yield;
    const { name, closes, isEmpty } = tag;
    if (!isXml && opened(tag) > MOST_OPENED) throw new FileFault(say('files.tooManyTags'));
    if (!isXml && NOT_COUNTED.has(name)) continue;
    if (isEmpty && (isXml || FOREIGN.has(name) || (foreign > 0 && !BREAKS_OUT.has(name)))) continue;
    if (FOREIGN.has(name)) foreign = Math.max(0, foreign + (closes ? -1 : 1));
    depth = closes ? Math.max(0, depth - 1) : depth + 1;
    if (depth > DEEPEST) throw new FileFault(say('files.tooDeep'));
  }
}

/** Does the check of `lookForDepth` at once. */
export function expectShallow(html: string, isXml = false): void {
  finish(lookForDepth(html, isXml));
}

interface Tag {
  /** The name in lower case. */
  readonly name: string;
  /** The whole tag as it is written. */
  readonly text: string;
  readonly closes: boolean;
  /** Whether the tag ends with `/>`. */
  readonly isEmpty: boolean;
}

/**
 * Yields the tags of a page as a browser finds them (WHATWG HTML, 13.2.5). Skips tags in comments, in attribute values
 * and in elements that `isText` names. Each letter is read once, even in a hostile page.
 */
function* findTags(html: string, isText: (name: string) => boolean): Generator<Tag> {
  for (let at = html.indexOf('<'); at !== -1; at = html.indexOf('<', at)) {
    if (html.startsWith('<!--', at)) {
      at = html.indexOf('-->', at + 4);
      if (at === -1) return;
      continue;
    }
    TAG.lastIndex = at;
    const [start, slash, named] = TAG.exec(html) ?? [];
    if (start === undefined) {
      at++;
      continue;
    }
    const end = endOfTag(html, at + start.length);
    if (end === -1) return;
    const name = named!.toLowerCase();
    yield { name, text: html.slice(at, end), closes: slash === '/', isEmpty: html[end - 1] === '/' };
    at = end;
    if (slash === '/' || !isText(name)) continue;
    const closing = new RegExp(`</${name}`, 'gi');
    closing.lastIndex = at;
    at = closing.exec(html)?.index ?? html.length;
  }
}

const TAG = /<(\/?)([a-z][^\s/>]*)/iy;
/** Matches up to the end of a tag, or up to the beginning of a value. A quotation mark before the value is included. */
const ATTRIBUTE = /[^=>]*(?:=\s*["']?|>|$)/y;

/** Returns the index of the `>` that ends a tag, or -1 if there is none. */
function endOfTag(html: string, from: number): number {
  for (let at = from; at < html.length; ) {
    ATTRIBUTE.lastIndex = at;
    const found = ATTRIBUTE.exec(html)![0];
    at += found.length;
    if (found.endsWith('>')) return at - 1;
    const quote = found.at(-1);
    if (quote !== '"' && quote !== "'") continue;
    at = html.indexOf(quote, at) + 1;
    if (at === 0) return -1;
  }
  return -1;
}
