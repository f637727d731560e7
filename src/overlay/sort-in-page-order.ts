import { own } from './own.ts';

/**
 * Sorts things by the position where a node of each is drawn. A shadow root has the position of its host, and an
 * element in a slot has the position of the slot. If all nodes share one root, the browser's own comparison sorts them,
 * which is fast.
 */
export function sortInPageOrder<T>(things: Iterable<T>, nodeOf: (thing: T) => Node): T[] {
  const sorted = [...things];
  const root = sorted[0] && nodeOf(sorted[0]).getRootNode();
  if (sorted.every((thing) => nodeOf(thing).getRootNode() === root))
    return sorted.sort((a, b) => compare(nodeOf(a), nodeOf(b)));
  const paths = new Map(sorted.map((thing) => [thing, pathTo(nodeOf(thing))]));
  return sorted.sort((a, b) => comparePaths(paths.get(a)!, paths.get(b)!));
}

function compare(a: Node, b: Node): number {
  if (a === b) return 0;
  return a.compareDocumentPosition(b) & Node.DOCUMENT_POSITION_FOLLOWING ? -1 : 1;
}

/** Returns the path from the document down to a node. Each node of the path is drawn inside the one before it. */
function pathTo(node: Node): Node[] {
  const path: Node[] = [];
  for (let at: Node | null | undefined = node; at; at = around(at)) path.unshift(at);
  return path;
}

function around(node: Node): Node | null | undefined {
  const { assignedSlot, parentNode } = own(node as Element);
  return assignedSlot ?? parentNode ?? (node as Partial<ShadowRoot>).host;
}

function comparePaths(a: readonly Node[], b: readonly Node[]): number {
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  const one = a[i];
  const other = b[i];
  return one && other ? compare(one, other) : a.length - b.length;
}
