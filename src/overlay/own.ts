/**
 * A node by whose properties it can be asked: a form answers to the names of its fields before its own (`children` where a field is
 * called so), and a way up through such a `parentNode` would never end; so a form's are asked of its class. Any other node
 * is given back as it is. The wrapper may be read, but not handed to the browser as a node.
 */
export function own<T extends Node>(node: T): T {
  return node instanceof HTMLFormElement ? (new Proxy(node, ofItsClass) as T) : node;
}

const ofItsClass: ProxyHandler<Node> = {
  get(form, name) {
    const value: unknown = Reflect.get(HTMLFormElement.prototype, name, form);
    return typeof value === 'function' ? value.bind(form) : value;
  },
  // So that a wrapper stays as it is when it is asked for again.
  getPrototypeOf: () => HTMLElement.prototype,
};
