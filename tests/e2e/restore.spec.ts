import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { loadStoredShapes } from '../stored/stored-shapes.ts';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';

let browser: TestBrowser;
let view: Page;
const shapes = loadStoredShapes(1);

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  for (const open of browser.context.pages().slice(1)) await open.close();
  view = await browser.context.newPage();
  // Each of these pages creates its database.
  for (const name of ['desk', 'shelf']) {
    await view.goto(page(`${name}.html`));
    await expect
      .poll(() => view.evaluate(() => indexedDB.databases()))
      .toContainEqual(expect.objectContaining({ name }));
  }
  await wipe();
  await view.evaluate(async ({ local, desk, shelf }) => {
    const open = (name: string) =>
      new Promise<IDBDatabase>((resolve) => {
        const opening = indexedDB.open(name);
        opening.onsuccess = () => resolve(opening.result);
      });
    const put = async (
      name: string,
      store: string,
      entries: readonly (readonly [unknown, IDBValidKey?])[],
    ) => {
      const db = await open(name);
      const change = db.transaction(store, 'readwrite');
      for (const [value, key] of entries) change.objectStore(store).put(value, key);
      await new Promise((resolve) => {
        change.oncomplete = resolve;
      });
      db.close();
    };
    await chrome.storage.local.set(local);
    await put(
      'desk',
      'passages',
      desk.passages.map((passage) => [passage]),
    );
    await put(
      'shelf',
      'texts',
      shelf.texts.map((text) => [{ ...text, counts: Uint32Array.from(text.counts) }]),
    );
    await put(
      'shelf',
      'kept',
      Object.entries(shelf.kept).map(([id, text]) => [text, id]),
    );
  }, shapes);
  await view.goto(page('groups.html#share'));
  await view.getByRole('heading', { name: 'Save everything' }).waitFor();
});

const page = (path: string): string => browser.inside(`${path}`);

/** Returns all data in the browser, with the fields of each object sorted by name. */
async function readRaw(): Promise<string> {
  return view.evaluate(async () => {
    const all: unknown[] = [await chrome.storage.local.get(null)];
    for (const name of ['desk', 'shelf']) {
      const db = await new Promise<IDBDatabase>((resolve) => {
        const opening = indexedDB.open(name);
        opening.onsuccess = () => resolve(opening.result);
      });
      for (const store of db.objectStoreNames)
        all.push(
          await new Promise((resolve) => {
            const asking = db.transaction(store).objectStore(store).getAll();
            asking.onsuccess = () => resolve(asking.result);
          }),
        );
      db.close();
    }
    return JSON.stringify(all, (_, value: unknown) =>
      value?.constructor === Object ? Object.fromEntries(Object.entries(value).sort()) : value,
    );
  });
}

/** Empties the stores, as clearing a browser's data does. */
async function wipe(): Promise<void> {
  await view.evaluate(async () => {
    await chrome.storage.local.clear();
    for (const name of ['desk', 'shelf']) {
      const db = await new Promise<IDBDatabase>((resolve) => {
        const opening = indexedDB.open(name);
        opening.onsuccess = () => resolve(opening.result);
      });
      const change = db.transaction([...db.objectStoreNames], 'readwrite');
      for (const store of db.objectStoreNames) change.objectStore(store).clear();
      await new Promise((resolve) => {
        change.oncomplete = resolve;
      });
      db.close();
    }
  });
}

async function saveEverything(): Promise<string> {
  const saving = view.waitForEvent('download');
  await view.getByRole('button', { name: 'Save everything' }).click();
  const download = await saving;
  expect(download.suggestedFilename()).toMatch(/^wordreach-everything-\d{4}-\d\d-\d\d\.jsonl$/);
  return download.path();
}

const choose = (file: string) => view.getByLabel('Choose a file, or drop it here').setInputFiles(file);

test('everything that is saved, wiped and restored is the same as before', async () => {
  // The state of the copies in the browser account belongs to this browser, so it is left out.
  await view.evaluate(() => chrome.storage.local.remove('sync-state'));
  const before = await readRaw();
  const file = await saveEverything();
  await wipe();
  await view.reload();
  await view
    .getByRole('navigation')
    .getByRole('link', { name: /^Plovers/ })
    .waitFor();
  const wiped = await readRaw();
  expect(wiped).not.toContain('lighthouse');
  await choose(file);
  await view
    .getByText(
      'This file holds everything from a browser: 3 groups, 1 sequence of your own, 2 passages, 2 lessons and 2 texts on the shelf.',
      { exact: false },
    )
    .waitFor();
  expect(await axeFaults(view)).toEqual([]);
  expect(await readRaw()).toBe(wiped);
  expect(await view.evaluate(() => document.activeElement?.textContent)).toBe('Cancel');
  await view.getByRole('button', { name: 'Replace everything here' }).click();
  await view.getByText('Everything in the file is restored.').waitFor();
  expect(await readRaw()).toBe(before);
  await view
    .getByRole('navigation')
    .getByRole('link', { name: /^Terns/ })
    .waitFor();
  expect(await readFile(await saveEverything(), 'utf8')).toBe(await readFile(file, 'utf8'));
});

test('a restore changes nothing when the teacher cancels it, or when the file is damaged', async () => {
  const before = await readRaw();
  const file = await saveEverything();
  await choose(file);
  await view.getByRole('button', { name: 'Cancel' }).click();
  await view.getByRole('button', { name: 'Cancel' }).waitFor({ state: 'detached' });
  const text = await readFile(file, 'utf8');
  await view
    .getByLabel('Choose a file, or drop it here')
    .setInputFiles({ name: 'cut.jsonl', mimeType: '', buffer: Buffer.from(text.slice(0, -40)) });
  await view.getByText(/of this file is damaged\..*Nothing was changed\./).waitFor();
  expect(await readRaw()).toBe(before);
});

test('the pages show data that version 1 stored', async () => {
  await view.goto(page('desk.html'));
  await view.getByText('The lamp in the wind').first().waitFor();
  await view.goto(page('shelf.html#texts'));
  await view.getByRole('link', { name: 'The ferry is late' }).waitFor();
  await view.goto(page('lesson.html#group-1'));
  await view.getByText('Words with a', { exact: true }).first().waitFor();
});
