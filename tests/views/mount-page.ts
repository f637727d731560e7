import 'fake-indexeddb/auto';
import { setImmediate } from 'node:timers/promises';
import { type ComponentType, h, render } from 'preact';
import { afterEach, beforeEach } from 'vitest';
import { startPage } from '../../src/ui/start-page.ts';

/**
 * Shows a page of the extension as its entry point does, at an address such as `plovers/passage-1`. Closes the page
 * before. A test that calls this function again opens the page again, with only the stored data left.
 */
export async function openPage(Page: ComponentType, hash = ''): Promise<void> {
  await closePage();
  location.hash = hash;
  // The event of the new address is sent before the page is there, as at the start of a page.
  await setImmediate();
  startPage('Wordreach');
  const holder = document.createElement('div');
  document.body.append(holder);
  render(h(Page, {}), holder);
  await setImmediate();
}

/** Closes the page: tells the page that it is hidden, and removes it. */
export async function closePage(): Promise<void> {
  dispatchEvent(new Event('pagehide'));
  for (const holder of document.body.children) render(null, holder);
  document.body.replaceChildren();
  await setImmediate();
}

/** Files that the page gave the teacher to save, with their names, in order. */
export const saved: { readonly name: string; readonly content: Blob }[] = [];

const click = HTMLAnchorElement.prototype.click;
const offered = new Map<string, Blob>();
beforeEach(() => {
  saved.length = 0;
  offered.clear();
  URL.createObjectURL = (content) => {
    const address = `blob:wordreach/${offered.size}`;
    offered.set(address, content as Blob);
    return address;
  };
  URL.revokeObjectURL = () => undefined;
  HTMLAnchorElement.prototype.click = function (this: HTMLAnchorElement) {
    const content = offered.get(this.href);
    if (content) saved.push({ name: this.download, content });
    else click.call(this);
  };
});

afterEach(async () => {
  await closePage();
  localStorage.clear();
  for (const { name } of await indexedDB.databases())
    await new Promise((resolve, reject) => {
      const gone = indexedDB.deleteDatabase(name!);
      gone.onsuccess = resolve;
      gone.onerror = reject;
    });
});

/** Returns everything in a database, store by store, in the stored form. */
export async function readDatabase(name: string): Promise<Record<string, unknown[]>> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open(name);
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = reject;
  });
  const parts = await Promise.all(
    [...db.objectStoreNames].map(
      (store) =>
        new Promise<[string, unknown[]]>((resolve) => {
          const asking = db.transaction(store).objectStore(store).getAll();
          asking.onsuccess = () => resolve([store, asking.result]);
        }),
    ),
  );
  db.close();
  return Object.fromEntries(parts);
}

// An unhandled error goes to the page first, as in the browser. An error that the page does not handle fails the test.
const [...others] = process.listeners('unhandledRejection');
process.removeAllListeners('unhandledRejection');
process.on('unhandledRejection', (reason, promise) => {
  const event = Object.assign(new Event('unhandledrejection', { cancelable: true }), { reason, promise });
  if (dispatchEvent(event)) for (const listener of others) listener(reason, promise);
});
