import { setTimeout } from 'node:timers/promises';
import { type Ask, callIn, findWindow } from './firefox-protocol.ts';

/** Actions of the tests in Firefox's own window, around the web pages. */
export interface FirefoxWindow {
  /** Returns the host part of the extension's addresses, once the background of the extension has run. */
  whenRunning(): Promise<string>;
  /** Clicks the toolbar button for the active tab, as a user does. */
  press(): Promise<void>;
  /** Returns the text of the toolbar button's badge. */
  badge(): Promise<string>;
  /** Returns the shortcuts that Firefox has read from the manifest, for example `alt,shift R`. */
  shortcuts(): Promise<string[]>;
  /** Presses Alt, Shift and a capital letter. */
  pressShortcut(letter: string): Promise<void>;
  /** Chooses the extension's entry of the context menu, once the menu is open. */
  chooseFromMenu(): Promise<void>;
  /**
   * Runs a function on the document in the sidebar, which WebDriver cannot reach. The function cannot use variables
   * from outside.
   */
  inSidebar<T>(run: (document: Document) => T): Promise<T>;
  /**
   * Runs a function on the page of the active tab, with the browser's rights. The function can read closed shadow
   * roots.
   */
  inTab<T>(run: (document: Document) => T): Promise<T>;
  /** Runs a function in the extension's background page. The function cannot use variables from outside. */
  inBackground<T>(run: () => T | Promise<T>): Promise<T>;
  inBackground<T, Given>(run: (given: Given) => T | Promise<T>, given: Given): Promise<T>;
  /** Turns the extension off and on again, as a restart of the browser does. */
  restart(): Promise<void>;
}

/** Parts of Firefox's window that the tests use (seen in Firefox 153). */
interface Loader {
  addMessageListener(name: string, heard: (message: { data: string }) => void): void;
  removeMessageListener(name: string, heard: (message: { data: string }) => void): void;
  loadFrameScript(address: string, later: boolean): void;
}
interface MenuPopup extends HTMLElement {
  readonly state: string;
  activateItem(item: HTMLElement): void;
  hidePopup(): void;
}
interface Typist {
  beginInputTransactionForTests(window: Window): void;
  keydown(key: KeyboardEvent): void;
  keyup(key: KeyboardEvent): void;
}
declare const Components: {
  classes: Record<string, { createInstance(as: unknown): Typist }>;
  interfaces: { nsITextInputProcessor: unknown };
};
declare const CustomizableUI: { addWidgetToArea(id: string, area: string): void };
declare const AddonManager: {
  getAddonByID(id: string): Promise<{ disable(): Promise<void>; enable(): Promise<void> }>;
};
declare const gBrowser: { selectedBrowser: Element };
declare const SidebarController: { browser: HTMLIFrameElement };
declare const WebExtensionPolicy: {
  getByID(id: string): {
    mozExtensionHostname: string;
    extension: {
      backgroundState: string;
      views: ReadonlySet<{ viewType: string; xulBrowser: { messageManager: Loader } }>;
    };
  };
};
/**
 * The code to run and its place: the background page of the extension with a given id, the page of the active tab, or
 * the page in the sidebar.
 */
interface Asked {
  readonly view: 'sidebar' | 'tab' | 'background';
  readonly extension: string;
  readonly code: string;
}

/**
 * Returns access to Firefox's window through Firefox's own scope `chrome`, which the flag
 * `--remote-allow-system-access` opens.
 */
export async function createFirefoxWindow(ask: Ask, extension: string): Promise<FirefoxWindow> {
  const window = await findWindow(ask);
  const call = <T>(run: (given: string) => T | Promise<T>, given: string): Promise<T> =>
    callIn(ask, window, String(run), given);

  // Firefox builds the names of its widgets from the add-on's id in this way.
  const name = extension.replaceAll(/[^a-z0-9_-]/g, '_');
  const widget = `${name}-browser-action`;
  await call((id) => CustomizableUI.addWidgetToArea(id, 'nav-bar'), widget);

  const whenRunning = (): Promise<string> =>
    soon(() =>
      call((id) => {
        const policy = WebExtensionPolicy.getByID(id);
        const state = policy.extension.backgroundState;
        if (state !== 'running') throw new Error(`The background is ${state}.`);
        return policy.mozExtensionHostname;
      }, extension),
    );
  async function runIn<T>(view: Asked['view'], code: string): Promise<T> {
    const said = await callIn<string>(ask, window, String(askView), { view, extension, code });
    const { result, error } = JSON.parse(said) as { result: T; error?: string };
    if (error !== undefined) throw new Error(error);
    return result;
  }

  return {
    whenRunning,
    press: () =>
      call((id) => {
        const button = document.getElementById(id)?.querySelector<HTMLElement>('[class*=item-action-button]');
        if (!button) throw new Error('The toolbar has no button of the extension.');
        button.click();
      }, widget),
    badge: () =>
      call((id) => document.querySelector(`#${id} .toolbarbutton-badge`)?.textContent ?? '', widget),
    shortcuts: () =>
      call((id) => {
        const keys = [...document.querySelectorAll(`#ext-keyset-id-${id} key`)];
        return keys.map((key) => `${key.getAttribute('modifiers')} ${key.getAttribute('key')}`);
      }, name),
    pressShortcut: (letter) => call(typeInWindow, letter),
    inSidebar: (run) => runIn('sidebar', `(${run})(content.document)`),
    inTab: (run) => runIn('tab', `(${run})(content.document)`),
    inBackground: <T, Given>(run: (given: Given) => T | Promise<T>, given?: Given) =>
      runIn<T>('background', inPage(run, given)),
    async chooseFromMenu() {
      // The click that opens the menu comes from the page's process, so the menu opens with a delay.
      await soon(() => call(findMenu, ''));
      await call(chooseEntry, `${name}-menuitem-_check-selection`);
    },
    async restart() {
      await call(async (id) => {
        const addon = await AddonManager.getAddonByID(id);
        await addon.disable();
        await addon.enable();
      }, extension);
      await whenRunning();
    },
  };
}

/** Calls the function again until it succeeds. After ten seconds, throws the function's own error. */
async function soon<T>(ask: () => Promise<T>): Promise<T> {
  const end = Date.now() + 10_000;
  for (;;) {
    try {
      return await ask();
    } catch (error) {
      if (Date.now() > end) throw error;
      await setTimeout(50);
    }
  }
}

/**
 * Presses Alt, Shift and a letter in Firefox's window, whose shortcuts come first. Keys that WebDriver presses reach
 * only the page.
 */
function typeInWindow(letter: string): void {
  const { classes, interfaces } = Components;
  const typist = classes['@mozilla.org/text-input-processor;1']!.createInstance(
    interfaces.nsITextInputProcessor,
  );
  typist.beginInputTransactionForTests(window);
  const keys = [
    new KeyboardEvent('', { key: 'Alt', code: 'AltLeft', keyCode: 18 }),
    new KeyboardEvent('', { key: 'Shift', code: 'ShiftLeft', keyCode: 16 }),
    new KeyboardEvent('', { key: letter, code: `Key${letter}`, keyCode: letter.charCodeAt(0) }),
  ];
  for (const key of keys) typist.keydown(key);
  for (const key of keys.toReversed()) typist.keyup(key);
}

function findMenu(): void {
  const { state } = document.getElementById('contentAreaContextMenu') as MenuPopup;
  if (state !== 'open') throw new Error(`The context menu is ${state}.`);
}

function chooseEntry(entry: string): void {
  const menu = document.getElementById('contentAreaContextMenu') as MenuPopup;
  const item = document.getElementById(entry);
  if (item) menu.activateItem(item);
  else menu.hidePopup();
  if (!item) throw new Error('The context menu has no entry of the extension.');
}

/**
 * Returns code that runs a function as a script of the page itself. The function gets Firefox's `browser` as `chrome`,
 * since `browser` returns promises and `chrome` expects callbacks.
 */
function inPage<Given>(run: (given: Given) => unknown, given?: Given): string {
  const code = `const __name = (named) => named; (async (chrome) => JSON.stringify(await (${run})(${JSON.stringify(given ?? null)})))(browser)`;
  return `Cu.evalInSandbox(${JSON.stringify(code)}, Cu.Sandbox(content, { sandboxPrototype: content, wantXrays: false }))
    .then((said) => said && JSON.parse(said))`;
}

/** Runs code in a view's own process, with the browser's rights, through a frame script. */
function askView({ view, extension, code }: Asked): Promise<string> {
  const find = (): { messageManager: Loader } | null | undefined => {
    if (view === 'tab') return gBrowser.selectedBrowser as unknown as { messageManager: Loader };
    if (view === 'sidebar')
      return SidebarController.browser.contentDocument?.getElementById(
        'webext-panels-browser',
      ) as unknown as { messageManager: Loader };
    const { views } = WebExtensionPolicy.getByID(extension).extension;
    return [...views].find(({ viewType }) => viewType === 'background')?.xulBrowser;
  };
  const shown = find();
  if (!shown) throw new Error(`The ${view} is not open.`);
  const { messageManager } = shown;
  const name = `wordreach-test-${Math.random()}`;
  const script = `
    const __name = (named) => named;
    (async () => ${code})().then((result) => ({ result }), (error) => ({ error: String(error) }))
      .then((said) => sendAsyncMessage('${name}', JSON.stringify(said)));`;
  return new Promise((resolve) => {
    const heard = ({ data }: { data: string }): void => {
      messageManager.removeMessageListener(name, heard);
      resolve(data);
    };
    messageManager.addMessageListener(name, heard);
    messageManager.loadFrameScript(`data:,${encodeURIComponent(`{${script}}`)}`, false);
  });
}
