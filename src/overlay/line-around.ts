import { findEdge } from './find-edge.ts';
import { isPiece } from './join-pieces.ts';
import { own } from './own.ts';

/**
 * Returns the nearest node, from the given node upwards, whose text is one or more complete lines. Such a node can be
 * read again alone.
 */
export function lineAround(node: Node): Node {
  let at = node;
  for (;;) {
    const { nodeType, parentNode } = own(at);
    if (nodeType === Node.ELEMENT_NODE && findEdge(at as Element) === 'line' && !isPiece(at as Element))
      return at;
    const next = parentNode ?? (at as Partial<ShadowRoot>).host;
    if (!next) return at;
    at = next;
  }
}
