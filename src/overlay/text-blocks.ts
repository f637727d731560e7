import { type Edge, findEdge } from './find-edge.ts';
import { isInsideUnread, isRead } from './is-read.ts';
import { own } from './own.ts';

/** Text that reads as one line of thought: nodes whose words may run over from one into the next. */
export interface TextBlock {
  readonly nodes: readonly Text[];
  /** Nodes before which a word ends all the same: something stands in between. */
  readonly parted: ReadonlySet<Text>;
  /** What it is a line of, and may share with other lines. */
  readonly within: Node;
}

/**
 * The visible text under `root` in the order it is drawn, block by block: open shadow roots are entered and told
 * to `onShadow`, and what they place in their slots is read there. Left out: scripts, code, form fields, editable
 * text, whatever is not drawn.
 */
export function* findTextBlocks(root: Node, onShadow: (root: ShadowRoot) => void): Generator<TextBlock> {
  let nodes: Text[] = [];
  let parted = new Set<Text>();
  let isParted = false;
  let within = root;

  function* endLine(): Generator<TextBlock> {
    if (nodes.length > 0) yield { nodes, parted, within };
    nodes = [];
    parted = new Set();
    isParted = false;
  }
  function addText(node: Text): void {
    if (nodes.length === 0 && !/\S/.test(node.data)) return;
    if (nodes.length === 0) within = opened.findLast(({ edge }) => edge === 'line')?.node ?? root;
    nodes.push(node);
    if (isParted) parted.add(node);
    isParted = false;
  }
  function* pass(edge: Edge): Generator<TextBlock> {
    if (edge === 'line') yield* endLine();
    isParted ||= edge === 'word';
  }
  function* enter(element: Element): Generator<TextBlock> {
    const style = getComputedStyle(element);
    const edge = findEdge(element, style);
    yield* pass(edge);
    const read = isRead(element, style);
    if (read === 'none') yield* pass(edge);
    else open(element, read === 'all', edge);
  }
  function open(node: Node, showsText: boolean, edge: Edge): void {
    // A copy of the list, because the page may take children out while this waits for its turn.
    opened.push({ node, children: [...drawnChildren(node, onShadow)].values(), showsText, edge });
  }

  if (isInsideUnread(root)) return;
  // Not by recursion, since a page may be deeper than the stack.
  const opened: Opened[] = [];
  if (isElement(root)) yield* enter(root);
  else open(root, true, 'line');
  for (let level = opened.at(-1); level; level = opened.at(-1)) {
    const { value: child } = level.children.next();
    if (!child) {
      opened.pop();
      yield* pass(level.edge);
    } else if (isText(child)) {
      if (level.showsText) addText(child);
    } else if (isElement(child) && own(child).isConnected) yield* enter(child);
  }
  yield* endLine();
}

/** An element that is being walked through. */
interface Opened {
  readonly node: Node;
  readonly children: Iterator<Node>;
  readonly showsText: boolean;
  readonly edge: Edge;
}

/** Children where they are drawn: a host draws its shadow root, a slot what is placed in it. */
function drawnChildren(given: Node, onShadow: (root: ShadowRoot) => void): Iterable<Node> {
  const node = own(given);
  if (!isElement(node)) return node.childNodes;
  if (node.shadowRoot) {
    onShadow(node.shadowRoot);
    return node.shadowRoot.childNodes;
  }
  const placed = node instanceof HTMLSlotElement ? node.assignedNodes() : [];
  return placed.length > 0 ? placed : node.childNodes;
}

function isText(node: Node): node is Text {
  return own(node).nodeType === 3;
}

function isElement(node: Node): node is Element {
  return own(node).nodeType === 1;
}
