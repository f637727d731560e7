/**
 * Returns a node whose own properties can be read safely. A form field called `children` or `parentNode` hides the
 * form's property of that name, and a walk upwards through such a `parentNode` would never end. So a form is wrapped,
 * and its properties are read from its class. Any other node is returned as it is. The wrapper may be read, but not
 * passed to the browser as a node.
 */
export function own<T extends Node>(node: T): T {
  return node instanceof HTMLFormElement ? (new Proxy(node, ofItsClass) as T) : node;
}

const ofItsClass: ProxyHandler<Node> = {
  get(form, name) {
    const value: unknown = Reflect.get(HTMLFormElement.prototype, name, form);
    return typeof value === 'function' ? value.bind(form) : value;
  },
  // A wrapper that is passed in again is not wrapped a second time.
  getPrototypeOf: () => HTMLElement.prototype,
};
