import { type Edge, findEdge } from './find-edge.ts';
import { isInsideUnread, isRead } from './is-read.ts';
import { edgeBetween, isPlaced } from './join-pieces.ts';
import { own } from './own.ts';
import { shadowOf } from './shadow-of.ts';

/** Text that is read as one line. A word may continue from one node into the next. */
export interface TextBlock {
  readonly nodes: readonly Text[];
  /** Nodes before which a word always ends, because something is in between. */
  readonly parted: ReadonlySet<Text>;
  /** Nodes that continue a word broken over lines (chil-<br>dren). Left out if there are none. */
  readonly broken?: ReadonlySet<Text>;
  /** The element in which the block is a line. The element may have further lines. */
  readonly within: Node;
}

/**
 * Finds the visible text under `root` in the order in which it is drawn, block by block. Shadow roots are entered and
 * reported to `onShadow`. The content that they place in slots is read at the slot. Left out: scripts, code, form
 * fields, editable text, and text that is not drawn.
 */
export function* findTextBlocks(root: Node, onShadow: (root: ShadowRoot) => void): Generator<TextBlock> {
  let nodes: Text[] = [];
  let parted: Set<Text> | undefined;
  let isParted = false;
  let within = root;
  let broken: Set<Text> | undefined;
  /** The placed element that the walk has just left. Its edge counts unless the next element continues its line. */
  let left: Opened | undefined;
  let between: Edge = 'line';

  function* endLine(): Generator<TextBlock> {
    if (nodes.length > 0) yield { nodes, parted: parted ?? NONE, within, ...(broken && { broken }) };
    nodes = [];
    parted = undefined;
    broken = undefined;
    isParted = false;
  }
  function addText(node: Text, level: Opened): void {
    if (nodes.length === 0 && !/\S/.test(node.data)) return;
    if (nodes.length === 0) within = opened.findLast(({ edge }) => edge === 'line')?.node ?? root;
    nodes.push(node);
    drawnIn.set(node, level.node);
    if (isParted) {
      parted ??= new Set();
      parted.add(node);
    }
    isParted = false;
  }
  function* pass(edge: Edge): Generator<TextBlock> {
    if (edge === 'line') yield* endLine();
    isParted ||= edge === 'word';
  }
  function* enter(element: Element): Generator<TextBlock> {
    const rest = restOfBrokenWord(nodes.at(-1), element);
    if (rest) {
      broken ??= new Set();
      broken.add(rest);
      return;
    }
    const style = getComputedStyle(element);
    const edge = findEdge(element, style);
    if (!left) yield* pass(edge);
    else if (between === 'word') isParted = true;
    left = undefined;
    const read = isRead(element, style);
    if (read === 'none') yield* pass(edge);
    else open(element, read === 'all', edge, style);
  }
  function open(node: Node, showsText: boolean, edge: Edge, style?: CSSStyleDeclaration): void {
    // A list is made, because the page may remove children while this generator waits for its turn.
    const children = drawnChildren(node, onShadow).values();
    opened.push({ node, children, showsText, edge, style });
  }
  function* leave(level: Opened): Generator<TextBlock> {
    const isPieceOfText = level.style && level.edge !== 'none' && nodes.length > 0;
    if (isPieceOfText && isPlaced(level.node as Element, level.style!)) left = level;
    else yield* pass(level.edge);
  }

  if (isInsideUnread(root)) return;
  // The walk is not recursive, since a page may be nested deeper than the stack allows.
  const opened: Opened[] = [];
  if (isElement(root)) yield* enter(root);
  else open(root, true, 'line');
  for (let level = opened.at(-1); level; level = opened.at(-1)) {
    const { value: child } = level.children.next();
    if (left && !(child && isBlank(child))) {
      between = child && isElement(child) ? edgeBetween(left.node as Element, child) : 'line';
      if (between === 'line') {
        yield* pass(left.edge);
        left = undefined;
      }
    }
    if (!child) {
      opened.pop();
      yield* leave(level);
    } else if (isText(child)) {
      if (level.showsText && !left) addText(child, level);
    } else if (isElement(child) && own(child).isConnected) yield* enter(child);
  }
  yield* endLine();
}

/** The set of most blocks. One set for all of them saves memory on a long page. */
const NONE: ReadonlySet<Text> = new Set();

/**
 * The element, slot or shadow root in which each text was drawn when it was read. A script cannot ask a page for the
 * slots of closed shadow roots.
 */
export const drawnIn = new WeakMap<Text, Node>();

/**
 * Returns the text that may continue a word broken after a hyphen: dren in chil-<br>dren, but not Bay in
 * Jeanne-<br>Bay.
 */
function restOfBrokenWord(before: Text | undefined, element: Element): Text | null {
  const node = own(element);
  if (node.tagName !== 'BR' || !before || node.previousSibling !== before) return null;
  if (!/\p{L}-$/u.test(before.data)) return null;
  const { nextSibling } = node;
  return nextSibling && isText(nextSibling) && /^\s?\p{Ll}/u.test(nextSibling.data) ? nextSibling : null;
}

/** An element that is being walked through. */
interface Opened {
  readonly node: Node;
  readonly children: Iterator<Node>;
  readonly showsText: boolean;
  readonly edge: Edge;
  /** Undefined for a shadow root or the page itself. */
  readonly style: CSSStyleDeclaration | undefined;
}

/** Returns the children where they are drawn. A host draws its shadow root, and a slot draws the elements placed in it. */
function drawnChildren(given: Node, onShadow: (root: ShadowRoot) => void): Node[] {
  const node = own(given);
  if (!isElement(node)) return childrenOf(node);
  const shadow = shadowOf(given as Element);
  if (shadow) {
    onShadow(shadow);
    return childrenOf(shadow);
  }
  const placed = node instanceof HTMLSlotElement ? node.assignedNodes() : [];
  return placed.length > 0 ? placed : childrenOf(node);
}

/** Returns the children of a node. The browser keeps its own list of children (`childNodes`) for good, once asked for it. */
function childrenOf({ firstChild }: Node): Node[] {
  const children: Node[] = [];
  for (let child = firstChild; child; child = own(child).nextSibling) children.push(child);
  return children;
}

/** Returns whether a node is a blank. A blank between placed pieces is not drawn. */
function isBlank(node: Node): boolean {
  return !isElement(node) && !/\S/.test(node.nodeValue ?? '');
}

function isText(node: Node): node is Text {
  return own(node).nodeType === 3;
}

function isElement(node: Node): node is Element {
  return own(node).nodeType === 1;
}
