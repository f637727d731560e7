import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8 } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { builtExtension } from '../../src/tools/launch-extension.ts';
import { makeDocx, makeEpub } from '../desk/make-files.ts';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';

let browser: TestBrowser;
let shelf: Page;
/** Errors that the page reported. */
let faults: string[];

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  await clearKept(browser);
  shelf = await browser.context.newPage();
  faults = [];
  shelf.on('pageerror', ({ message }) => faults.push(message));
  await shelf.goto(address('add'));
  await shelf.getByRole('heading', { name: 'Add texts' }).waitFor();
});

const address = (view: string) => browser.inside(`shelf.html#${view}`);

/** Returns the stored content of every store of the shelf's database. */
async function readRaw(): Promise<string> {
  return shelf.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('shelf');
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = reject;
    });
    const parts = await Promise.all(
      [...db.objectStoreNames].map(
        (name) =>
          new Promise<unknown>((resolve) => {
            const asking = db.transaction(name).objectStore(name).getAll();
            asking.onsuccess = () => resolve(asking.result);
          }),
      ),
    );
    db.close();
    // Keys are sorted, since an object read from a file may have its keys in another order.
    return JSON.stringify(parts, (_, value: unknown) =>
      value?.constructor === Object ? Object.fromEntries(Object.entries(value).sort()) : value,
    );
  });
}

interface TestFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

async function choose(files: readonly TestFile[]): Promise<void> {
  await shelf.getByLabel(/^Choose texts/).setInputFiles(
    files.map(({ name, content }) => ({
      name,
      mimeType: '',
      buffer: Buffer.from(typeof content === 'string' ? strToU8(content) : content),
    })),
  );
}

async function addAll(files: readonly TestFile[]): Promise<void> {
  await choose(files);
  await shelf
    .getByRole('status')
    .filter({ hasText: /^(one|\d+) read\./ })
    .waitFor();
}

const NET =
  'Bram has a big net. The net is in the mud. Otto has a cod and a crab in his net. It is a hot day.';
const RAIN =
  'Wait on the quay. The rain came. Ines and Bram wait in the rain. A snail sat on the mail. Otto had a pail.';
const FERRY =
  'The Marigold turned slowly round the lighthouse. Passengers leaned over the railings, searching for the harbour.';
const stories: readonly TestFile[] = [
  { name: 'The ferry.txt', content: FERRY },
  { name: 'A big net.txt', content: NET },
  { name: 'Rain.txt', content: RAIN },
];

async function titles(): Promise<string[]> {
  await shelf.goto(address('texts'));
  await shelf.locator('.shelf-row').first().waitFor();
  return shelf.locator('.shelf-title').allTextContents();
}

describe('a page saved to the shelf from the panel', () => {
  const story = readFileSync(new URL('../../public/story/index.html', import.meta.url), 'utf8');

  async function openPanel(): Promise<Page> {
    const page = await browser.open(browser.serve('story.html', story));
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.size > 0);
    const panel = await browser.openPanel(page);
    await panel.waitForSelector('.reach');
    return panel;
  }

  test('is stored as its words with the panel’s reach, without any sentence', async () => {
    const panel = await openPanel();
    const reach = await panel.locator('.reach-figure').textContent();
    await panel.getByRole('button', { name: 'Save to shelf' }).click();
    await panel.getByText('Saved to the shelf.').waitFor();
    expect(await axeFaults(panel)).toEqual([]);
    await panel.getByRole('button', { name: 'Save to shelf' }).click();
    await panel.getByText('Already on the shelf.').waitFor();
    expect(await titles()).toEqual(['The Night the Lamp Went Out']);
    expect(await shelf.locator('.shelf-reach').textContent()).toBe(reach);
    const raw = await readRaw();
    expect(raw).toContain('lighthouse');
    // The stored words are sorted, so that not even four words of the story are in their original order.
    const words = story
      .replace(/<(script|style)[\s\S]*?<\/\1>|<[^>]*>/g, ' ')
      .replace(/[^a-z]+/gi, ' ')
      .toLowerCase();
    const runs = words.split(' ').map((_, i, all) => all.slice(i, i + 4).join('\\n'));
    expect(runs.filter((run) => run.split('\\n').length === 4 && raw.includes(run))).toEqual([]);
  });

  test('keeps its full text if “keep full text” is ticked, and can then be edited on the desk', async () => {
    const panel = await openPanel();
    await panel.getByLabel('keep full text').check();
    await panel.getByRole('button', { name: 'Save to shelf' }).click();
    await panel.getByText('Saved to the shelf.').waitFor();
    await titles();
    await shelf.locator('.shelf-title').click();
    await shelf.getByText(/, full text/).waitFor();
    await shelf.getByRole('button', { name: 'Edit this text' }).click();
    await shelf.waitForURL(/desk\.html#passage/);
    await shelf.locator('.cm-line').nth(3).waitFor();
    expect(await shelf.getByLabel('Title').inputValue()).toBe('The Night the Lamp Went Out');
  });
});

describe('the list of texts', () => {
  test('shows tags, notes and deletions that are made in another window', async () => {
    await addAll(stories);
    await titles();
    const other = await browser.open(address('texts'));
    await other.locator('.shelf-row').first().waitFor();
    await shelf.getByRole('link', { name: 'A big net' }).click();
    await shelf.getByLabel('Tags').fill('boats, week 12');
    await shelf.getByLabel('Tags').press('Enter');
    await shelf.getByLabel('Notes').fill('with the song of the net');
    await other.locator('.shelf-tag', { hasText: 'week 12' }).waitFor();
    await other.getByLabel('Search').fill('song');
    await other.getByText('1 of 3 texts found').waitFor();
    await shelf.getByRole('button', { name: 'Remove tag boats' }).click();
    await shelf.getByRole('button', { name: 'Remove tag boats' }).waitFor({ state: 'detached' });
    await shelf.getByRole('button', { name: 'Delete', exact: true }).click();
    await shelf.waitForFunction(() => document.activeElement?.textContent === 'Keep');
    await shelf.getByRole('button', { name: 'Delete', exact: true }).click();
    await shelf.getByText('2 texts on the shelf').waitFor();
    await other.getByText('0 of 2 texts found').waitFor();
    const raw = await readRaw();
    expect(raw).not.toMatch(/big net|song|cod/);
    expect(raw).toContain('lighthouse');
  });
});

describe('adding many texts at once', () => {
  test('reads twelve files of all kinds, explains the broken one, and makes each chapter a text', async () => {
    const plain = Array.from({ length: 8 }, (_, n) => ({
      name: `Day ${n}.txt`,
      content: `${NET} Day ${n}.`,
    }));
    const docx = await makeDocx();
    await addAll([
      ...plain,
      { name: 'page.html', content: `<title>Fish</title><body><p>${FERRY}</p>` },
      { name: 'letter.docx', content: docx },
      { name: 'broken.docx', content: docx.slice(0, 200) },
      {
        name: 'book.epub',
        content: makeEpub([
          { name: 'one', label: 'The wall', body: `<h1>The wall</h1>${`<p>${NET}</p>`.repeat(8)}` },
          { name: 'two', label: 'The bell', body: `<h1>The bell</h1>${`<p>${RAIN}</p>`.repeat(8)}` },
        ]),
      },
    ]);
    expect(await shelf.getByText(/^11 read\./).textContent()).toBe(
      '11 read. 12 texts saved to the shelf, one failed.',
    );
    expect(await shelf.locator('.shelf-failed').textContent()).toMatch(/broken\.docx.*damaged/);
    expect(await shelf.getByRole('progressbar', { name: 'Progress' }).count()).toBe(1);
    const found = await titles();
    expect(found.filter((title) => title.includes(': The'))).toHaveLength(2);
    expect(found).toHaveLength(12);
  });

  test('reads open tabs in which the button was pressed, and only counts all other tabs', async () => {
    const pressed = browser.serve('ferry.html', `<title>The ferry</title><p>${FERRY}</p>`);
    const page = await browser.open(pressed);
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.size > 0);
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.size === 0);
    await browser.open(browser.serve('net.html', `<title>The secret net</title><p>${NET}</p>`));
    await shelf.bringToFront();
    await shelf.getByRole('button', { name: 'Find my open tabs' }).click();
    await shelf.getByRole('checkbox', { name: /The ferry/ }).waitFor();
    await shelf.getByText(/cannot read .* other tabs? yet/).waitFor();
    expect(await shelf.textContent('main')).not.toContain('secret');
    await shelf.getByText('Only some of them').click();
    await shelf.getByLabel(/^Web addresses/).fill(`${pressed}#top https://tarnquay.example/net`);
    await shelf.getByText('Wordreach cannot read this page yet.').waitFor();
    await shelf.getByRole('button', { name: 'Read one page' }).click();
    await shelf.getByText('one read. one text saved to the shelf.').waitFor();
    expect(await titles()).toEqual(['The ferry']);
    // The page was not shaded before, and stays without shading.
    expect(await page.evaluate(() => CSS.highlights.size)).toBe(0);
  });
});

test('readers for Word documents, PDF and books load with the first such file, not with the page', async () => {
  const scripts = new Set<string>();
  shelf.on('request', (request) => {
    const { pathname } = new URL(request.url());
    if (/\.m?js$/.test(pathname)) scripts.add(pathname);
  });
  const loaded = (): number =>
    [...scripts].reduce((sum, path) => sum + statSync(join(builtExtension, path)).size, 0);
  await shelf.reload();
  await shelf.getByRole('heading', { name: 'Add texts' }).waitFor();
  const before = loaded();
  // This is the size in bytes with the engine, its named rules in both accents and the catalogue. The document readers
  // are as large again.
  expect(before).toBeGreaterThan(100_000);
  expect(before).toBeLessThan(640_000);
  await addAll([{ name: 'letter.docx', content: await makeDocx() }]);
  expect(loaded()).toBeGreaterThan(before + 200_000);
});

test('titles stay in view while a narrow table of texts by group is scrolled', async () => {
  await addAll(stories);
  await shelf.goto(address('groups'));
  await shelf.locator('.shelf-table').waitFor();
  await shelf.setViewportSize({ width: 320, height: 800 });
  const region = shelf.getByRole('region', { name: 'Texts by group' });
  expect(await region.evaluate((box) => box.scrollWidth > box.clientWidth)).toBe(true);
  const left = await region.evaluate((box) => {
    box.scrollLeft = 60;
    return box.querySelector('tbody th')!.getBoundingClientRect().left - box.getBoundingClientRect().left;
  });
  expect(Math.abs(left)).toBeLessThan(1);
});

test('no view has axe faults or is wider than a narrow window, in light or dark', async () => {
  await addAll([...stories, { name: 'broken.pdf', content: 'none' }]);
  // The group Herons has moved from the first step to its present step since the last visit to the shelf.
  await shelf.evaluate(() =>
    chrome.storage.local.set({ 'shelf-seen': { herons: { sequence: 'steady-steps', step: 1 } } }),
  );
  const views: readonly (readonly [string, string])[] = [
    ['add', '.shelf-failed'],
    ['texts', '.shelf-news'],
    ['groups', '.shelf-table'],
    ['file', '.drop'],
  ];
  await titles();
  const text = await shelf.locator('.shelf-title').first().getAttribute('href');
  for (const [view, ready] of [...views, [text!.slice(1), '.report'] as const]) {
    await shelf.goto(address(view));
    await shelf.locator(ready).first().waitFor({ state: 'attached' });
    for (const [colorScheme, width] of [
      ['light', 1200],
      ['dark', 320],
    ] as const) {
      await shelf.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await shelf.setViewportSize({ width, height: 900 });
      expect(await shelf.evaluate(() => document.documentElement.scrollWidth), view).toBeLessThanOrEqual(
        width,
      );
      expect(await axeFaults(shelf), `${view} ${colorScheme} ${width}`).toEqual([]);
    }
  }
  expect(faults).toEqual([]);
});
