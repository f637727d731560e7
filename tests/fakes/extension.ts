import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, vi } from 'vitest';
import { kept, browser as storageAlone } from './local-storage.ts';

/**
 * An in-memory stand-in for the part of the browser's extension interface that pages use. This is a setup file for
 * tests of views: the interface must exist before any module uses it.
 */

type Listener = (...given: never[]) => unknown;
/** A list of listeners with the interface of the browser's own lists. */
interface Heard {
  addListener(listener: Listener): void;
  removeListener(listener: Listener): void;
  hasListener(listener: Listener): boolean;
  readonly all: Set<Listener>;
}
function heard(): Heard {
  const all = new Set<Listener>();
  return {
    all,
    addListener: (listener) => all.add(listener),
    removeListener: (listener) => all.delete(listener),
    hasListener: (listener) => all.has(listener),
  };
}
function tell(list: Heard, ...given: unknown[]): unknown[] {
  return [...list.all].map((listener) => listener(...(given as never[])));
}

const ORIGIN = 'chrome-extension://wordreach';

/** The values saved in the browser account. */
export const copied = new Map<string, unknown>();
/** The open tabs, in the browser's form. A test adds its own tabs. */
export const tabs: { id: number; url?: string; active: boolean; windowId: number }[] = [];
/** The functions that answer messages to a tab, by the id of the tab. They stand for the content scripts. */
export const pages = new Map<number, (question: unknown) => unknown>();
/** The reasons why the storage refuses to be read or written; normally null. Reading may be refused for some keys only. */
export const refused: { read: ((keys: unknown) => string | null) | null; write: string | null } = {
  read: null,
  write: null,
};

const storageChanged = heard();
const messages = heard();
export const tabActivated = heard();
export const tabUpdated = heard();

type Changes = Record<string, { oldValue?: unknown; newValue?: unknown }>;
/** Returns an area of the browser's storage. Listeners are called after each change, as in the browser. */
function area(name: 'local' | 'sync', map: Map<string, unknown>) {
  const telling = async (keys: readonly string[], change: () => Promise<void>): Promise<void> => {
    const before = new Map(keys.map((key) => [key, map.get(key)]));
    await change();
    const changes: Changes = {};
    for (const key of keys) {
      const [oldValue, newValue] = [before.get(key), map.get(key)];
      if (JSON.stringify(oldValue) === JSON.stringify(newValue)) continue;
      changes[key] = {
        ...(oldValue !== undefined && { oldValue: structuredClone(oldValue) }),
        ...(newValue !== undefined && { newValue: structuredClone(newValue) }),
      };
    }
    if (Object.keys(changes).length > 0) queueMicrotask(() => tell(storageChanged, changes, name));
  };
  return {
    get: async (keys: string | readonly string[] | null = null) => {
      const why = refused.read?.(keys);
      if (why) throw new Error(why);
      const asked = keys === null ? [...map.keys()] : [keys].flat();
      return structuredClone(
        Object.fromEntries(asked.filter((key) => map.has(key)).map((key) => [key, map.get(key)])),
      );
    },
    set: async (items: Record<string, unknown>) => {
      if (refused.write) throw new Error(refused.write);
      // The browser saves only values that JSON can hold.
      const plain = JSON.parse(JSON.stringify(items)) as Record<string, unknown>;
      await telling(Object.keys(plain), async () => {
        for (const [key, value] of Object.entries(plain)) map.set(key, value);
      });
    },
    remove: async (keys: string | readonly string[]) => {
      const all = [keys].flat();
      await telling(all, async () => {
        for (const key of all) map.delete(key);
      });
    },
  };
}

/** Sends a message to the listeners of the extension's own parts, and returns the first answer. */
async function send(message: unknown, tab?: { id: number }): Promise<unknown> {
  const sender = { id: 'wordreach', ...(tab && { tab, frameId: 0 }) };
  const answer = tell(messages, structuredClone(message), sender).find((given) => given instanceof Promise);
  if (!answer) throw new Error('Could not establish connection. Receiving end does not exist.');
  return structuredClone(await answer);
}

/** Sends a message from a tab, as the content script of its page does. */
export async function sendFromTab(id: number, message: unknown): Promise<void> {
  await send(message, { id }).catch(() => undefined);
}

const nothing = async (): Promise<undefined> => undefined;
const [local, sync] = [area('local', kept), area('sync', copied)];
const extension = {
  storage: {
    local,
    sync,
    managed: storageAlone.storage.managed,
    onChanged: storageChanged,
  },
  runtime: {
    id: 'wordreach',
    getURL: (path: string) => `${ORIGIN}/${path.replace(/^\//, '')}`,
    getManifest: () => ({ version: '0.1.0' }),
    sendMessage: (message: unknown) => send(message),
    onMessage: messages,
    onConnect: heard(),
    connect: () => ({ onDisconnect: heard(), disconnect: () => undefined }),
    onInstalled: heard(),
  },
  tabs: {
    query: async ({ active }: { active?: boolean }) => tabs.filter((tab) => !active || tab.active),
    get: async (id: number) => tabs.find((tab) => tab.id === id),
    create: nothing,
    update: nothing,
    sendMessage: async (id: number, question: unknown) => {
      const page = pages.get(id);
      if (!page) throw new Error('Could not establish connection. Receiving end does not exist.');
      return structuredClone({ done: await page(question) });
    },
    onActivated: tabActivated,
    onUpdated: tabUpdated,
  },
  // A tab with a content script may be read. Other tabs may not.
  scripting: {
    executeScript: async ({ target }: { target: { tabId: number } }) => {
      if (!pages.has(target.tabId)) throw new Error('Cannot access contents of the page.');
      return [{ frameId: 0 }];
    },
  },
  action: { onClicked: heard(), setBadgeText: nothing, setBadgeBackgroundColor: nothing },
  commands: { onCommand: heard(), getAll: async () => [] },
  contextMenus: { onClicked: heard(), removeAll: nothing, create: () => undefined },
};
// The interface has both names, as in Firefox. webextension-polyfill returns the object under `browser`.
vi.stubGlobal('chrome', extension);
vi.stubGlobal('browser', extension);

/** Returns files of the package from the folder that the build takes them from. */
vi.stubGlobal('fetch', async (address: string) => {
  const { href, pathname } = new URL(address, ORIGIN);
  if (!href.startsWith(`${ORIGIN}/`)) throw new TypeError(`Failed to fetch ${address}`);
  const file = await readFile(join(import.meta.dirname, '../../public', pathname));
  return {
    ok: true,
    arrayBuffer: async () => file.buffer.slice(file.byteOffset, file.byteOffset + file.byteLength),
    text: async () => file.toString('utf8'),
    json: async () => JSON.parse(file.toString('utf8')),
  };
});

beforeEach(async () => {
  // Removing the values also calls the listeners, which exist as long as the background script runs.
  await local.remove([...kept.keys()]);
  await sync.remove([...copied.keys()]);
  tabs.length = 0;
  pages.clear();
  refused.read = null;
  refused.write = null;
});
