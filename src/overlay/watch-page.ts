import { blockAround, interrupts } from './text-blocks.ts';

const WATCHED: MutationObserverInit = {
  subtree: true,
  childList: true,
  characterData: true,
  attributes: true,
  attributeFilter: ['hidden', 'open', 'class', 'style'],
};

/** Parts of a page to be read again, and text that has left it. */
export interface PageChange {
  readonly parts: ReadonlySet<Node>;
  readonly gone: readonly Node[];
}

/** Watches document and shadow roots until aborted; changes of one turn come together. */
export function watchPage(onChange: (change: PageChange) => void, signal: AbortSignal): (root: Node) => void {
  const observer = new MutationObserver((records) => {
    const parts = new Set<Node>();
    const gone: Node[] = [];
    for (const record of records) {
      gone.push(...record.removedNodes);
      for (const part of partsOf(record)) parts.add(part);
    }
    onChange({ parts, gone });
  });
  signal.addEventListener('abort', () => observer.disconnect(), { once: true });
  return (root) => observer.observe(root, WATCHED);
}

/** New blocks are read by themselves; any other change touches the line of text it stands in. */
function partsOf({ type, target, addedNodes, removedNodes }: MutationRecord): Node[] {
  if (type !== 'childList') return [blockAround(target)];
  const apart = [...addedNodes, ...removedNodes].every(
    (node) => isElement(node) && (!node.isConnected || interrupts(node)),
  );
  return apart ? [...addedNodes] : [blockAround(target)];
}

function isElement(node: Node): node is Element {
  return node.nodeType === 1;
}
