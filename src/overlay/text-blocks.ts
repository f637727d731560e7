import { findEdge } from './find-edge.ts';
import { isInsideUnread, isRead } from './is-read.ts';

/** Text that reads as one line of thought: nodes whose words may run over from one into the next. */
export interface TextBlock {
  readonly nodes: readonly Text[];
  /** Nodes before which a word ends all the same: something stands in between. */
  readonly parted: ReadonlySet<Text>;
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

  function* endLine(): Generator<TextBlock> {
    if (nodes.length > 0) yield { nodes, parted };
    nodes = [];
    parted = new Set();
    isParted = false;
  }
  function addText(node: Text): void {
    if (nodes.length === 0 && !/\S/.test(node.data)) return;
    nodes.push(node);
    if (isParted) parted.add(node);
    isParted = false;
  }
  function* enter(element: Element): Generator<TextBlock> {
    const style = getComputedStyle(element);
    const edge = findEdge(element, style);
    if (edge === 'line') yield* endLine();
    isParted ||= edge === 'word';
    const read = isRead(element, style);
    if (read !== 'none') yield* walk(element, read === 'all');
    if (edge === 'line') yield* endLine();
    isParted ||= edge === 'word';
  }
  function* walk(node: Node, showsText: boolean): Generator<TextBlock> {
    // A copy of the list, because the page may take children out while this waits for its turn.
    for (const child of [...drawnChildren(node, onShadow)]) {
      if (isText(child)) {
        if (showsText) addText(child);
      } else if (isElement(child) && child.isConnected) yield* enter(child);
    }
  }

  if (isInsideUnread(root)) return;
  if (isElement(root)) yield* enter(root);
  else yield* walk(root, true);
  yield* endLine();
}

/** Children where they are drawn: a host draws its shadow root, a slot what is placed in it. */
function drawnChildren(node: Node, onShadow: (root: ShadowRoot) => void): Iterable<Node> {
  if (!isElement(node)) return node.childNodes;
  if (node.shadowRoot) {
    onShadow(node.shadowRoot);
    return node.shadowRoot.childNodes;
  }
  const placed = node instanceof HTMLSlotElement ? node.assignedNodes() : [];
  return placed.length > 0 ? placed : node.childNodes;
}

function isText(node: Node): node is Text {
  return node.nodeType === 3;
}

function isElement(node: Node): node is Element {
  return node.nodeType === 1;
}
