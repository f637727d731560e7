import fc from 'fast-check';

/** A piece of a generated page: a text, or an element with its content. */
export type Tree = string | TreeElement;

export interface TreeElement {
  readonly tag: string;
  readonly style: string;
  readonly kids: readonly Tree[];
  /** The content of the element's shadow root, placed around a slot for the children. */
  readonly shadow?: readonly Tree[];
  /**
   * Whether the browser draws the element but the overlay does not read it, for example code or text for screen
   * readers.
   */
  readonly unread?: boolean;
  readonly attribute?: string;
}

const PIECES = [
  ...['tide', 'sea', 'nets', 'harbour', 'ha', 'ven', 's', 'a', 'can’t', "gull's", 'rope', 'is'],
  ...['har\u00ADbour', 'life\u200Bboat', 'caf\u00E9', 'cafe\u0301', '12', '3rd', '\u05D9\u05DD'],
  ...[' ', ' ', ' ', '\n', '\n  ', '\t', '\u00A0', ', ', '. ', '-', '—', '“', '”', '(', '&', '/ '],
];
const INLINE = 'span b i a em bdi bdo mark small u abbr x-word font time'.split(' ');
const BLOCK = 'div p section ul ol li blockquote h2 dl dt dd figure figcaption fieldset center x-part'.split(
  ' ',
);
const ANY_STYLE = [
  ...['', '', '', 'color:teal', 'position:relative', 'font-size:2em', 'letter-spacing:2px', 'opacity:0.4'],
  ...['display:none', 'direction:rtl', 'white-space:pre'],
  ...['white-space:pre-line', 'white-space:nowrap', 'display:contents'],
];
const BLOCK_STYLE = [
  ...['display:flex', 'display:grid'],
  ...['display:list-item', 'display:flow-root', 'columns:2', 'display:inline;margin:0;padding:0'],
];
const OWN = 'sup sub button label q'.split(' ');
const OWN_STYLE = [
  ...['visibility:hidden', 'visibility:visible', 'visibility:collapse'],
  ...['display:table', 'display:table-row', 'display:table-cell'],
  ...['display:inline-block', 'display:inline-flex', 'display:inline-table', 'float:right', 'float:left'],
  ...[
    'text-transform:uppercase',
    'text-transform:capitalize',
    'transform:rotate(9deg)',
    'vertical-align:super',
    'margin:0 9px',
  ],
];
const NEVER_READ = [
  ...['code', 'kbd', 'samp', 'textarea', 'select', 'canvas', 'audio', 'svg', 'rt', 'script', 'style'],
  ...['template', 'iframe', 'title'],
];
const UNSEEN = [
  'opacity:0',
  'position:absolute;width:1px;height:1px;overflow:hidden',
  'position:absolute;clip:rect(0 0 0 0)',
  'position:absolute;clip-path:inset(50%)',
  'position:absolute;left:-9999px',
  'display:block;height:0;overflow:hidden',
  'content-visibility:hidden;display:block',
];

/**
 * Returns trees of elements that contain words and parts of words. Plain trees contain only parts at which innerText
 * also splits words. The other trees also contain inline boxes, elements read separately, and text that is not read.
 */
export function randomTrees(kind: 'plain' | 'any'): fc.Arbitrary<readonly Tree[]> {
  const text = fc
    .array(fc.constantFrom(...PIECES), { minLength: 1, maxLength: 6 })
    .map((pieces) => pieces.join(''));
  const leaf = fc.constantFrom<Tree>(
    ...['br', 'wbr', 'hr', 'img', '#comment'].map((tag) => ({ tag, style: '', kids: [] })),
    { tag: 'br', style: 'display:none', kids: [] },
  );
  const isPlain = kind === 'plain';
  const plainLeaf = leaf.filter((tree) => !isPlain || typeof tree === 'string' || tree.tag !== 'img');
  const { kids } = fc.letrec<{ kids: Tree[]; tree: Tree }>((tie) => ({
    kids: fc.array(tie('tree'), { maxLength: 5, depthIdentifier: 'tree' }),
    tree: fc.oneof(
      { depthSize: 'medium', depthIdentifier: 'tree', withCrossShrink: true },
      { weight: 5, arbitrary: text },
      { weight: 1, arbitrary: plainLeaf },
      { weight: 4, arbitrary: element(INLINE, ANY_STYLE, tie('kids')) },
      { weight: 4, arbitrary: element(BLOCK, [...ANY_STYLE, ...BLOCK_STYLE], tie('kids')) },
      { weight: 1, arbitrary: table(tie('kids')) },
      { weight: 1, arbitrary: details(tie('kids')) },
      { weight: 1, arbitrary: shadowed(tie('kids')) },
      ...(isPlain
        ? []
        : [
            { weight: 1, arbitrary: element(OWN, ANY_STYLE, tie('kids')) },
            { weight: 2, arbitrary: element([...INLINE, 'div'], OWN_STYLE, tie('kids')) },
            { weight: 1, arbitrary: neverRead(text) },
            { weight: 1, arbitrary: unseen(tie('kids')) },
          ]),
    ),
  }));
  return kids;
}

/**
 * Elements that are generated without a style. Whatever the style, the browser treats `p` as a paragraph and `fieldset`
 * as a box, and the overlay treats `li` as an entry.
 */
const ALWAYS_BLOCK = new Set(['p', 'li', 'fieldset']);

function element(
  tags: readonly string[],
  styles: readonly string[],
  kids: fc.Arbitrary<Tree[]>,
): fc.Arbitrary<Tree> {
  return fc
    .record({ tag: fc.constantFrom(...tags), style: fc.constantFrom(...styles), kids })
    .map((tree) => (ALWAYS_BLOCK.has(tree.tag) ? { ...tree, style: '' } : tree))
    .map((tree) => (tree.style === 'display:contents' ? { ...tree, kids: withoutBlank(tree.kids) } : tree));
}

/** Removes leading blank text, since Chromium draws no space at the start of an element without a box of its own. */
function withoutBlank(kids: readonly Tree[]): readonly Tree[] {
  const from = kids.findIndex((kid) => typeof kid !== 'string' || /\S/.test(kid));
  return from === -1 ? [] : kids.slice(from);
}

function table(kids: fc.Arbitrary<Tree[]>): fc.Arbitrary<Tree> {
  const cell = element(['td', 'th'], ['', '', 'display:none'], kids);
  const row = element(['tr'], ['', '', 'display:none'], fc.array(cell, { maxLength: 3 }));
  const part = element(['tbody', 'thead', 'tfoot', 'caption'], [''], fc.array(row, { maxLength: 2 }));
  return element(['table'], [''], fc.array(part, { maxLength: 2 }));
}

function details(kids: fc.Arbitrary<Tree[]>): fc.Arbitrary<Tree> {
  return fc.tuple(fc.boolean(), element(['summary'], [''], kids), kids).map(([open, summary, rest]) => ({
    tag: 'details',
    style: '',
    kids: [summary, ...rest],
    ...(open && { attribute: 'open' }),
  }));
}

function shadowed(kids: fc.Arbitrary<Tree[]>): fc.Arbitrary<Tree> {
  return fc.record({
    tag: fc.constantFrom('x-card', 'div'),
    style: fc.constantFrom('', 'display:block', 'display:contents'),
    kids: kids.map(withoutBlank),
    shadow: kids,
  });
}

function neverRead(text: fc.Arbitrary<string>): fc.Arbitrary<Tree> {
  const tag = fc.constantFrom(...NEVER_READ);
  return fc.tuple(tag, text).map(([tag, inside]) => ({ tag, style: '', kids: [inside], unread: true }));
}

function unseen(kids: fc.Arbitrary<Tree[]>): fc.Arbitrary<Tree> {
  const style = fc.constantFrom(...UNSEEN);
  return fc.tuple(style, kids).map(([style, inside]) => ({ tag: 'span', style, kids: inside, unread: true }));
}

/** Returns a tree as markup, for people to read. */
export function writeTree(tree: Tree): string {
  if (typeof tree === 'string') return tree;
  const { tag, style, kids, shadow, attribute } = tree;
  if (tag === '#comment') return '<!---->';
  const inShadow =
    shadow &&
    `<template shadowrootmode="open"><b><slot></slot></b>${shadow.map(writeTree).join('')}</template>`;
  const start = `<${tag}${style && ` style="${style}"`}${attribute ? ` ${attribute}` : ''}>`;
  return `${start}${inShadow ?? ''}${kids.map(writeTree).join('')}</${tag}>`;
}
