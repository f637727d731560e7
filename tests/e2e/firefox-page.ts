import type { Bidi } from './bidi.ts';
import { waitFor } from './wait-for.ts';

/** Keys without a letter, as WebDriver numbers them (https://www.w3.org/TR/webdriver2/#keyboard-actions). */
const KEYS: Readonly<Record<string, string>> = {
  Shift: '\uE008',
  Control: '\uE009',
  Alt: '\uE00A',
  Enter: '\uE007',
  Escape: '\uE00C',
};

/** One tab of Firefox. */
export interface FirefoxPage {
  /** Runs a function in the page; it sees no variables from outside but what it is given. What it gets and gives must fit into JSON. */
  evaluate<T>(run: () => T | Promise<T>): Promise<T>;
  evaluate<T, G>(run: (given: G) => T | Promise<T>, given: G): Promise<T>;
  /** Clicks on the thing with this role and name, as soon as there is one. */
  click(role: string, name: string): Promise<void>;
  /** Opens the context menu on an element. */
  openMenu(selector: string): Promise<void>;
  /** Moves the pointer to a place in the view, in CSS pixels. */
  moveTo(x: number, y: number): Promise<void>;
  /** Chooses an entry of a list box by its words. */
  select(name: string, entry: string): Promise<void>;
  /** Presses keys together, like `Alt+Shift+R`. */
  press(keys: string): Promise<void>;
  /** Prints it on A4, with the margins it asks for; gives the PDF. */
  print(): Promise<Uint8Array>;
  reload(): Promise<void>;
  toFront(): Promise<void>;
  close(): Promise<void>;
}

interface Node {
  readonly sharedId: string;
}

/** Runs a function given as text in a browsing context; its arguments and what it gives go as JSON. */
export async function callIn<T>(bidi: Bidi, context: string, code: string, given: object[]): Promise<T> {
  const said = await bidi.ask<
    | { type: 'success'; result: { value?: string } }
    | { type: 'exception'; exceptionDetails: { text: string } }
  >('script.callFunction', {
    // tsx writes calls of its own `__name` into functions, which are unknown where they run.
    functionDeclaration: `async (...given) => {
      const __name = (named) => named;
      return JSON.stringify(await (${code})(...given));
    }`,
    arguments: given,
    awaitPromise: true,
    userActivation: true,
    target: { context },
  });
  if (said.type === 'exception') throw new Error(said.exceptionDetails.text);
  return (said.result.value === undefined ? undefined : JSON.parse(said.result.value)) as T;
}

export function createFirefoxPage(bidi: Bidi, context: string): FirefoxPage {
  async function find(role: string, name: string): Promise<Node> {
    return waitFor(
      async () => {
        const locator = { type: 'accessibility', value: { role, name } };
        const { nodes } = await bidi.ask<{ nodes: Node[] }>('browsingContext.locateNodes', {
          context,
          locator,
        });
        if (!nodes[0]) throw new Error(`There is no ${role} “${name}”.`);
        return nodes[0];
      },
      { timeout: 5_000 },
    );
  }
  async function point({ sharedId }: Node, button: number): Promise<void> {
    await callIn(bidi, context, '(element) => element.scrollIntoView({ block: "center" })', [{ sharedId }]);
    const origin = { type: 'element', element: { sharedId } };
    const pointer = [
      { type: 'pointerMove', x: 0, y: 0, origin },
      { type: 'pointerDown', button },
      { type: 'pointerUp', button },
    ];
    const actions = [{ type: 'pointer', id: 'mouse', actions: pointer }];
    await bidi.ask('input.performActions', { context, actions });
  }
  return {
    evaluate: <T, G>(run: (given: G) => T | Promise<T>, given?: G) =>
      callIn<T>(bidi, context, `(given) => (${String(run)})(given && JSON.parse(given))`, [
        given === undefined ? { type: 'undefined' } : { type: 'string', value: JSON.stringify(given) },
      ]),
    click: async (role, name) => point(await find(role, name), 0),
    async openMenu(selector) {
      const locator = { type: 'css', value: selector };
      const { nodes } = await bidi.ask<{ nodes: Node[] }>('browsingContext.locateNodes', {
        context,
        locator,
      });
      await point(nodes[0]!, 2);
    },
    async moveTo(x, y) {
      const actions = [{ type: 'pointer', id: 'mouse', actions: [{ type: 'pointerMove', x, y }] }];
      await bidi.ask('input.performActions', { context, actions });
    },
    async select(name, entry) {
      const choose = (list: HTMLSelectElement, wanted: string): void => {
        const found = [...list.options].find(({ text }) => text.includes(wanted));
        if (!found) throw new Error(`The list has no “${wanted}”.`);
        list.value = found.value;
        list.dispatchEvent(new Event('input', { bubbles: true }));
        list.dispatchEvent(new Event('change', { bubbles: true }));
      };
      const { sharedId } = await find('combobox', name);
      await callIn(bidi, context, String(choose), [{ sharedId }, { type: 'string', value: entry }]);
    },
    async press(keys) {
      const values = keys.split('+').map((key) => KEYS[key] ?? key);
      const down = values.map((value) => ({ type: 'keyDown', value }));
      const up = values.toReversed().map((value) => ({ type: 'keyUp', value }));
      const actions = [{ type: 'key', id: 'keyboard', actions: [...down, ...up] }];
      await bidi.ask('input.performActions', { context, actions });
    },
    async print() {
      const page = { width: 21, height: 29.7 };
      const margin = { top: 1.8, bottom: 2, left: 2, right: 2 };
      const { data } = await bidi.ask<{ data: string }>('browsingContext.print', { context, page, margin });
      return Buffer.from(data, 'base64');
    },
    reload: () => bidi.ask('browsingContext.reload', { context, wait: 'complete' }),
    toFront: () => bidi.ask('browsingContext.activate', { context }),
    close: () => bidi.ask('browsingContext.close', { context }),
  };
}
