import { findEdge } from './find-edge.ts';
import { isRead } from './is-read.ts';
import { isPiece } from './join-pieces.ts';
import { lineAround } from './line-around.ts';
import { createPatience } from './lose-patience.ts';
import { own } from './own.ts';

const WATCHED: MutationObserverInit = {
  subtree: true,
  childList: true,
  characterData: true,
  attributes: true,
  attributeFilter: ['hidden', 'open', 'class', 'style'],
};

/** The parts of a page to be read again, and the nodes that have left their place or are no longer followed. */
export interface PageChange {
  readonly parts: ReadonlySet<Node>;
  readonly gone: ReadonlySet<Node>;
  /** Parts that rewrite themselves forever. */
  readonly restless: ReadonlySet<Node>;
}

/**
 * Watches the document and shadow roots until aborted. Changes that happen together are reported together. `onAny` is
 * called for every change, even if no text is affected.
 */
export function watchPage(
  onChange: (change: PageChange) => void,
  onAny: () => void,
  signal: AbortSignal,
): (root: Node) => void {
  const patience = createPatience(signal);
  const observer = new MutationObserver((records) => {
    onAny();
    const { followed, restless } = patience.sort(records);
    const parts = new Set<Node>();
    const gone = new Set<Node>();
    for (const record of followed) {
      for (const node of record.removedNodes) gone.add(node);
      for (const part of partsOf(record)) parts.add(part);
    }
    if (parts.size + gone.size + restless.size > 0) onChange({ parts, gone, restless });
  });
  signal.addEventListener('abort', () => observer.disconnect());
  return (root) => observer.observe(root, WATCHED);
}

/**
 * Returns the parts to be read after a change. New blocks are read by themselves. Any other change affects its line of
 * text.
 */
function partsOf({ type, target, addedNodes, previousSibling, nextSibling }: MutationRecord): Node[] {
  if (!own(target).isConnected) return [];
  const element = isElement(target) ? target : target.parentElement;
  if (element && isRead(element) === 'none') return type === 'attributes' ? [element] : [];
  if (type !== 'childList') return [lineAround(target)];
  const added = [...addedNodes].filter(
    (node) => own(node).isConnected && !(isElement(node) && isRead(node) === 'none'),
  );
  const lines = added.filter(isLine);
  const inLine = added.filter((node) => !isLine(node));
  const touchesLine = inLine.some((node) => /\S/.test(own(node).textContent ?? '')) || lines.length === 0;
  const isOfWord = lines.some((line) => isPiece(line as Element));
  const splitsLine = isInLine(previousSibling) && isInLine(nextSibling);
  return splitsLine || isOfWord || (inLine.length > 0 && touchesLine) ? [lineAround(target)] : lines;
}

/** Returns whether a node beside a new block is part of a line, which the block may have cut in two. */
function isInLine(node: Node | null): boolean {
  return (
    node !== null && !isLine(node) && (node.nodeType !== Node.TEXT_NODE || /\S/.test(node.nodeValue ?? ''))
  );
}

function isLine(node: Node): boolean {
  return isElement(node) && findEdge(node) === 'line';
}

function isElement(node: Node): node is Element {
  return own(node).nodeType === 1;
}
