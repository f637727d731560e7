/** Returns the text nodes under a node, in order. Shadow roots are not entered. */
export function textsIn(root: Node): Text[] {
  const found: Text[] = [];
  const walker = root.ownerDocument!.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) found.push(walker.currentNode as Text);
  return found;
}
