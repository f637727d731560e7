import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';
import { finish } from './file-time.ts';

/** No page anybody wrote has elements so deep in each other; browsers cut off at some 500 themselves. */
const DEEPEST = 1000;

/** Elements without an end, and those whose end may be left out: the latter are in each other only within others. */
const NOT_COUNTED = new Set(
  'area base br col embed hr img input link meta param source track wbr p li dt dd rt rp option optgroup colgroup caption thead tbody tfoot tr td th html head body'.split(
    ' ',
  ),
);
/** Within these `/>` ends an element; in a page itself it does not. */
const FOREIGN = new Set(['svg', 'math']);
/** Elements that cannot be within those, and end them (WHATWG HTML, 13.2.6.5). */
const BREAKS_OUT = new Set(
  'b big blockquote center code div dl em font h1 h2 h3 h4 h5 h6 i menu nobr ol pre ruby s small span strong strike sub sup table tt u ul var'.split(
    ' ',
  ),
);
/** Elements that hold no others, whatever is in them. */
const TEXT = new Set(['script', 'style', 'textarea', 'title', 'xmp', 'iframe', 'noembed', 'noframes']);

/** Elements that are open again in the next block where they were not closed in the one before; only one of `a` and `nobr` (WHATWG HTML, 13.2.4.3). */
const FORMATTING = new Set('b big code em font i s small strike strong tt u'.split(' '));
/** So many of the same are kept open. */
const ALIKE = 3;
/** An end within these ends nothing that was opened before them. */
const MARKERS = new Set('applet caption marquee object table template'.split(' '));
/** As many elements as a few tags may become, at most; no page anybody wrote comes near. */
const MOST_OPENED = 2_000_000;

/** Counts how many elements a browser may make of elements left open, or more: 60 KB can become millions, and take it minutes. */
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
 * Lets a page through whose elements are no deeper in each other than a page's are, and which becomes no more than was written; `isXml` where
 * each element has its end, and `/>` is one. A step for each tag. Throws `FileFault`.
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

/** The same at once. */
export function expectShallow(html: string, isXml = false): void {
  finish(lookForDepth(html, isXml));
}

interface Tag {
  /** In small letters. */
  readonly name: string;
  /** All of it, as it is written. */
  readonly text: string;
  readonly closes: boolean;
  /** Whether it ends with `/>`. */
  readonly isEmpty: boolean;
}

/**
 * The tags of a page as a browser finds them (WHATWG HTML, 13.2.5): not in remarks, in values, nor in what `isText`. Each letter is looked at
 * once, whatever the page is made to be.
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
/** Up to the end of a tag or the beginning of a value, with its quotation mark if it has one. */
const ATTRIBUTE = /[^=>]*(?:=\s*["']?|>|$)/y;

/** Where the `>` of a tag is; -1 where there is none. */
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
