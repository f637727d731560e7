import type { Bidi } from './bidi.ts';
import type { FirefoxBrowser } from './firefox.ts';
import { callIn } from './firefox-page.ts';
import { waitFor } from './wait-for.ts';

/** What is done in the browser's own window, around the pages. */
interface ChromeScope extends Omit<FirefoxBrowser, 'inside' | 'open' | 'openText' | 'close'> {
  /** The host part of the extension's addresses, once its background has run. */
  whenRunning(): Promise<string>;
}

/** Parts of Firefox's window that are used here (seen in Firefox 153). */
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
  getByID(id: string): { mozExtensionHostname: string; extension: { backgroundState: string } };
};

/** The window is reached by Firefox's own scope `chrome`, which `--remote-allow-system-access` opens. */
export async function createChromeScope(bidi: Bidi, extension: string): Promise<ChromeScope> {
  const { contexts } = await bidi.ask<{ contexts: { context: string; url: string }[] }>(
    'browsingContext.getTree',
    { 'moz:scope': 'chrome' },
  );
  const window = contexts.find(({ url }) => url.includes('browser.xhtml'));
  if (!window) throw new Error('Firefox has no window.');
  const call = <T>(run: (given: string) => T | Promise<T>, given: string): Promise<T> =>
    callIn(bidi, window.context, String(run), [{ type: 'string', value: given }]);

  // Firefox makes the names of its widgets from the add-on's id in this way.
  const name = extension.replaceAll(/[^a-z0-9_-]/g, '_');
  const widget = `${name}-browser-action`;
  await call((id) => CustomizableUI.addWidgetToArea(id, 'nav-bar'), widget);

  const whenRunning = (): Promise<string> =>
    waitFor(
      () =>
        call((id) => {
          const policy = WebExtensionPolicy.getByID(id);
          const state = policy.extension.backgroundState;
          if (state !== 'running') throw new Error(`The background is ${state}.`);
          return policy.mozExtensionHostname;
        }, extension),
      { timeout: 10_000 },
    );
  async function runIn<T>(view: 'sidebar' | 'tab', run: (document: Document) => T): Promise<T> {
    const said = await call(askView, JSON.stringify({ view, code: String(run) }));
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
    inSidebar: (run) => runIn('sidebar', run),
    inTab: (run) => runIn('tab', run),
    async checkSelection() {
      // The click that opens the menu comes from the page's process.
      await waitFor(() => call(findMenu, ''), { timeout: 5_000 });
      await call(chooseFromMenu, `${name}-menuitem-_check-selection`);
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

/** Keys that WebDriver presses go to the page alone; these go to the window, whose shortcuts come first. */
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

function chooseFromMenu(entry: string): void {
  const menu = document.getElementById('contentAreaContextMenu') as MenuPopup;
  const item = document.getElementById(entry);
  if (item) menu.activateItem(item);
  else menu.hidePopup();
  if (!item) throw new Error('The context menu has no entry of the extension.');
}

/** Runs a function in a view's own process with the browser's rights, by a frame script. */
function askView(given: string): Promise<string> {
  const { view, code } = JSON.parse(given) as { view: 'sidebar' | 'tab'; code: string };
  const shown =
    view === 'tab'
      ? gBrowser.selectedBrowser
      : SidebarController.browser.contentDocument?.getElementById('webext-panels-browser');
  if (!shown) throw new Error('The sidebar is not open.');
  const { messageManager } = shown as unknown as { messageManager: Loader };
  const name = `wordreach-test-${Math.random()}`;
  const script = `
    let said;
    try { said = { result: (${code})(content.document) }; } catch (error) { said = { error: String(error) }; }
    sendAsyncMessage('${name}', JSON.stringify(said));`;
  return new Promise((resolve) => {
    const heard = ({ data }: { data: string }): void => {
      messageManager.removeMessageListener(name, heard);
      resolve(data);
    };
    messageManager.addMessageListener(name, heard);
    messageManager.loadFrameScript(`data:,${encodeURIComponent(`{${script}}`)}`, false);
  });
}
