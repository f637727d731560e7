import { findPlaces } from '../../src/overlay/find-places.ts';
import { findTextBlocks } from '../../src/overlay/text-blocks.ts';
import type { Tree, TreeElement } from './random-tree.ts';

/** Returns the text that the overlay reads under a node: all its letters in lower case, and the keys of its words. */
export function readWords(root: Node): { letters: string; keys: string[] } {
  const blocks = [...findTextBlocks(root, () => undefined)];
  return {
    letters: blocks
      .flatMap(({ nodes }) => nodes.map(({ data }) => data.replace(/[^\p{L}]/gu, '').toLowerCase()))
      .join(''),
    keys: blocks.flatMap((block) => findPlaces(block).places.map(({ key }) => key)),
  };
}

/**
 * Adds trees to the page. For innerText, the content of a shadow root is added without the root, and text that the
 * overlay does not read is left out.
 */
export function growTrees(into: Node, trees: readonly Tree[], forInnerText = false): void {
  for (const tree of trees) {
    if (typeof tree === 'string') into.appendChild(new Text(tree));
    else if (tree.tag === '#comment') into.appendChild(new Comment('words'));
    else if (!(forInnerText && tree.unread)) into.appendChild(grow(tree, forInnerText));
  }
}

function grow(tree: TreeElement, forInnerText: boolean): Element {
  const element = document.createElement(tree.tag);
  element.setAttribute('style', tree.style);
  if (tree.attribute) element.setAttribute(tree.attribute, '');
  const root = tree.shadow && !forInnerText ? element.attachShadow({ mode: 'open' }) : element;
  if (!tree.shadow) growTrees(element, tree.kids, forInnerText);
  else {
    const bold = root.appendChild(document.createElement('b'));
    if (root === element) growTrees(bold, tree.kids, true);
    else {
      bold.append(document.createElement('slot'));
      growTrees(element, tree.kids);
    }
    growTrees(root, tree.shadow, forInnerText);
  }
  return element;
}
