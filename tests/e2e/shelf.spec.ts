import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8 } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { builtExtension } from '../../src/tools/launch-extension.ts';
import { makeDocx, makeEpub } from '../desk/make-files.ts';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';

let browser: TestBrowser;
let shelf: Page;
/** What the page complained of. */
let faults: string[];

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  for (const open of browser.context.pages().slice(1)) await open.close();
  shelf = await browser.context.newPage();
  faults = [];
  shelf.on('pageerror', ({ message }) => faults.push(message));
  await shelf.goto(address('add'));
  await shelf.evaluate(async () => {
    await chrome.storage.local.clear();
    for (const name of ['shelf', 'desk'])
      await new Promise((resolve) => {
        indexedDB.deleteDatabase(name).onsuccess = resolve;
      });
  });
  await shelf.reload();
  await shelf.getByRole('heading', { name: 'Add many' }).waitFor();
});

const address = (view: string) => browser.inside(`shelf.html#${view}`);

/** Everything of every database of the shelf, as it lies there. */
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
    // Keys in their order, since an object read from a file may have them in another.
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

/** The step at which the shelf was last seen for Herons. */
function seenStep(): Promise<number | undefined> {
  return shelf.evaluate(async () => {
    const { 'shelf-seen': seen } = (await chrome.storage.local.get('shelf-seen')) as {
      'shelf-seen'?: Record<string, { step: number }>;
    };
    return seen?.herons?.step;
  });
}

/** The step of Herons that is stored; undefined before it was moved. */
function storedStep(page: Page): Promise<number | undefined> {
  return page.evaluate(async () => {
    const { groups } = (await chrome.storage.local.get('groups')) as {
      groups?: { groups: Record<string, { step: number }> };
    };
    return groups?.groups.herons?.step;
  });
}

/** Moves Herons on by keys on the slider of the panel. */
async function moveOn(steps: number): Promise<void> {
  const page = await browser.open(browser.serve('blank.html', '<p>Tarn Quay</p>'));
  const panel = await browser.openPanel(page);
  const slider = panel.locator('#step');
  const from = Number(await slider.inputValue());
  await slider.focus();
  for (let n = 1; n <= Math.abs(steps); n++) {
    await panel.keyboard.press(steps > 0 ? 'ArrowRight' : 'ArrowLeft');
    await panel.getByText(new RegExp(`^Step ${from + n * Math.sign(steps)} of`)).waitFor();
    await expect.poll(() => storedStep(panel)).toBe(from + n * Math.sign(steps));
  }
  await panel.close();
  await page.close();
  await shelf.bringToFront();
}

describe('from the panel', () => {
  const story = readFileSync(new URL('../../public/story/index.html', import.meta.url), 'utf8');

  async function openPanel(): Promise<Page> {
    const page = await browser.open(browser.serve('story.html', story));
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.size > 0);
    const panel = await browser.openPanel(page);
    await panel.waitForSelector('.reach');
    return panel;
  }

  test('a page is put on the shelf: its words, with the reach the panel says, and no sentence of it', async () => {
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
    // The words stand sorted, so that not even four of the story follow one another.
    const words = story
      .replace(/<(script|style)[\s\S]*?<\/\1>|<[^>]*>/g, ' ')
      .replace(/[^a-z]+/gi, ' ')
      .toLowerCase();
    const runs = words.split(' ').map((_, i, all) => all.slice(i, i + 4).join('\\n'));
    expect(runs.filter((run) => run.split('\\n').length === 4 && raw.includes(run))).toEqual([]);
  });

  test('with its text, if that is ticked, and then it can be put on the desk', async () => {
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

describe('the list', () => {
  test('what reads now comes first, what reads soonest next; search and tags narrow it', async () => {
    await shelf.getByLabel(/^Tags for all/).fill('harbour');
    await addAll(stories);
    expect(await titles()).toEqual(['A big net', 'Rain', 'The ferry']);
    expect(await shelf.locator('.shelf-band h2').allTextContents()).toEqual([
      'Ready now 1',
      'Ready in 5 steps 1',
      'Ready later, or not in this sequence 1',
    ]);
    expect(await shelf.locator('.shelf-fit').nth(1).textContent()).toMatch(/ready in 5 steps/);
    await shelf.getByLabel('Search').fill('RAIN');
    await shelf.getByText('1 of 3 texts found').waitFor();
    await shelf.getByLabel('Search').fill('');
    await shelf.getByRole('combobox', { name: 'Tag' }).selectOption('harbour');
    await shelf.getByText('3 texts on the shelf').waitFor();
  });

  test('another mark is kept, and only from 90 to 100', async () => {
    await addAll(stories);
    await titles();
    const mark = shelf.getByLabel('Ready at');
    await mark.fill('90');
    await mark.press('Tab');
    await expect
      .poll(() => shelf.evaluate(() => chrome.storage.local.get('shelf-mark')))
      .toEqual({ 'shelf-mark': 90 });
    await mark.fill('70');
    await mark.press('Tab');
    expect(await mark.inputValue()).toBe('90');
    await shelf.reload();
    await shelf.locator('.shelf-row').first().waitFor();
    expect(await mark.inputValue()).toBe('90');
  });

  test('when a group moves on, what it came to read is shown until that is put away', async () => {
    await addAll(stories);
    await titles();
    expect(await shelf.locator('.shelf-news').count()).toBe(0);
    await expect.poll(seenStep).toBe(24);
    await moveOn(5);
    const news = shelf.getByRole('region', { name: 'News for Herons' });
    await news.getByRole('heading', { name: 'One more text is ready for Herons' }).waitFor();
    expect(await news.getByRole('link').allTextContents()).toEqual(['Rain']);
    expect(await axeFaults(shelf)).toEqual([]);
    await shelf.reload();
    await news.waitFor();
    await news.getByRole('button', { name: /Dismiss/ }).click();
    await news.waitFor({ state: 'detached' });
    await expect.poll(seenStep).toBe(29);
    await shelf.reload();
    await shelf.locator('.shelf-row').first().waitFor();
    expect(await news.count()).toBe(0);
    await moveOn(-5);
    await shelf.getByText('ready in 5 steps', { exact: true }).waitFor();
    expect(await news.count()).toBe(0);
  });

  test('another window shows what is tagged, noted and deleted here', async () => {
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

describe('many at once', () => {
  test('twelve files of all kinds are read, the broken one says why, chapters are texts of their own', async () => {
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
    expect(await shelf.getByText(/^12 read\./).textContent()).toBe(
      '12 read. 12 texts saved to the shelf, one failed.',
    );
    expect(await shelf.locator('.shelf-failed').textContent()).toMatch(/broken\.docx.*damaged/);
    expect(await shelf.getByRole('progressbar', { name: 'Progress' }).count()).toBe(1);
    const found = await titles();
    expect(found.filter((title) => title.includes(': The'))).toHaveLength(2);
    expect(found).toHaveLength(12);
  });

  test('stopped, what is read stays; taken up again, the rest is read, each once', async () => {
    const files = Array.from({ length: 40 }, (_, n) => ({
      name: `Log ${n}.txt`,
      content: `${FERRY} Page ${n}.\n\n`.repeat(1500),
    }));
    await choose(files);
    await shelf.getByText(/^[1-9]\d* of 40 read\.$/).waitFor();
    await shelf.getByRole('button', { name: 'Stop' }).click();
    const says = (await shelf.getByText(/^Stopped after \d+ of 40/).textContent())!;
    const done = Number(/\d+/.exec(says)![0]);
    expect(done).toBeLessThan(40);
    await shelf.getByRole('link', { name: 'Texts', exact: true }).click();
    await shelf.locator('.shelf-row').first().waitFor();
    await shelf.getByRole('link', { name: 'Add many' }).click();
    await shelf.getByRole('button', { name: 'Continue' }).click();
    await shelf.getByText('40 read. 40 texts saved to the shelf.').waitFor();
    expect((await titles()).toSorted()).toEqual(files.map(({ name }) => name.replace('.txt', '')).toSorted());
  });

  test('only looked at, nothing is on the shelf until it is put there', async () => {
    await shelf.getByLabel('only show a table').check();
    await shelf.locator('.drop').evaluate(
      (box, files) => {
        const dataTransfer = new DataTransfer();
        for (const { name, content } of files) dataTransfer.items.add(new File([content], name));
        box.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
      },
      stories as { name: string; content: string }[],
    );
    await shelf.getByText('3 read. 3 texts in the table below.').waitFor();
    expect(await shelf.locator('.shelf-table tbody tr').count()).toBe(3);
    expect(await readRaw()).not.toContain('lighthouse');
    await shelf.getByRole('button', { name: 'Save these 3 to shelf' }).click();
    await shelf.getByText('Saved to the shelf.').waitFor();
    expect(await titles()).toHaveLength(3);
  });

  test('of the open pages, those on which the button was pressed are read, the others only counted', async () => {
    const pressed = browser.serve('ferry.html', `<title>The ferry</title><p>${FERRY}</p>`);
    const page = await browser.open(pressed);
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.size > 0);
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.size === 0);
    await browser.open(browser.serve('net.html', `<title>The secret net</title><p>${NET}</p>`));
    await shelf.bringToFront();
    await shelf.getByRole('button', { name: 'Find open pages' }).click();
    await shelf.getByRole('checkbox', { name: /The ferry/ }).waitFor();
    await shelf.getByText(/cannot read .* other tabs? yet/).waitFor();
    expect(await shelf.textContent('main')).not.toContain('secret');
    await shelf.getByLabel(/^Web addresses/).fill(`${pressed}#top https://tarnquay.example/net`);
    await shelf.getByText('Wordreach cannot read this page yet.').waitFor();
    await shelf.getByRole('button', { name: 'Read one page' }).click();
    await shelf.getByText('one read. one text saved to the shelf.').waitFor();
    expect(await titles()).toEqual(['The ferry']);
    // It was not shaded before, and is not afterwards.
    expect(await page.evaluate(() => CSS.highlights.size)).toBe(0);
  });
});

test('saved in a file, deleted, and opened again, the shelf is what it was', async () => {
  await shelf.getByLabel('keep full text').check();
  await addAll(stories);
  const before = await readRaw();
  await shelf.goto(address('file'));
  const saving = shelf.waitForEvent('download');
  await shelf.getByRole('button', { name: 'Save the file' }).click();
  const file = await (await saving).path();
  await shelf.getByRole('button', { name: /^Delete these 3 texts/ }).click();
  await shelf.getByRole('button', { name: 'Delete', exact: true }).click();
  await shelf.getByText('The whole shelf: 0 texts').waitFor();
  expect(await readRaw()).toBe('[[],[]]');
  await shelf.getByLabel(/^Choose a saved shelf file/).setInputFiles(file);
  await shelf.getByText('3 texts were added.').waitFor();
  expect(await readRaw()).toBe(before);
  await shelf.getByLabel(/^Choose a saved shelf file/).setInputFiles(file);
  await shelf.getByText('All texts in this file are already on your shelf.').waitFor();
  await shelf
    .getByLabel(/^Choose a saved shelf file/)
    .setInputFiles({ name: 'a.jsonl', mimeType: '', buffer: Buffer.from('{"steps":[]}') });
  await shelf.getByText(/holds no shelf/).waitFor();
  expect(await readRaw()).toBe(before);
});

test('what opens Word documents, PDF and books is loaded with the first such file, not with the page', async () => {
  const scripts = new Set<string>();
  shelf.on('request', (request) => {
    const { pathname } = new URL(request.url());
    if (/\.m?js$/.test(pathname)) scripts.add(pathname);
  });
  const loaded = (): number =>
    [...scripts].reduce((sum, path) => sum + statSync(join(builtExtension, path)).size, 0);
  await shelf.reload();
  await shelf.getByRole('heading', { name: 'Add many' }).waitFor();
  const before = loaded();
  // With the engine and the catalogue, in bytes; what reads documents has as much again.
  expect(before).toBeGreaterThan(100_000);
  expect(before).toBeLessThan(500_000);
  await addAll([{ name: 'letter.docx', content: await makeDocx() }]);
  expect(loaded()).toBeGreaterThan(before + 200_000);
});

describe('which text for whom', () => {
  test('groups in columns, sorted by any of them, by keys too', async () => {
    await addAll(stories);
    await shelf.goto(address('groups'));
    await shelf.locator('.shelf-table').waitFor();
    const rows = () => shelf.locator('.shelf-table tbody th').allTextContents();
    expect(await rows()).toEqual(['A big net', 'Rain', 'The ferry']);
    expect(await shelf.locator('.shelf-table thead th').allTextContents()).toEqual([
      'Text',
      'Words',
      'Herons ↓step 24',
      expect.stringMatching(/^Ploversstep \d+$/),
    ]);
    await shelf.getByRole('button', { name: 'Text', exact: true }).press('Enter');
    await shelf.getByRole('button', { name: 'Text', exact: true }).press('Enter');
    expect(await rows()).toEqual(['The ferry', 'Rain', 'A big net']);
    expect(await shelf.getByRole('columnheader', { name: 'Text' }).getAttribute('aria-sort')).toBe(
      'descending',
    );
    await shelf.getByLabel('Plovers').uncheck();
    expect(await shelf.locator('.shelf-table thead th').count()).toBe(3);
    const printed = await shelf.evaluate(
      () =>
        new Promise<number>((resolve) => {
          window.print = () => resolve(document.querySelectorAll('.shelf-table tbody tr').length);
          [...document.querySelectorAll('button')]
            .find(({ textContent }) => /Print/.test(textContent))!
            .click();
        }),
    );
    expect(printed).toBe(3);
    await shelf.setViewportSize({ width: 320, height: 800 });
    const region = shelf.getByRole('region', { name: 'Texts by group' });
    expect(await region.evaluate((box) => box.scrollWidth > box.clientWidth)).toBe(true);
    const left = await region.evaluate((box) => {
      box.scrollLeft = 60;
      return box.querySelector('tbody th')!.getBoundingClientRect().left - box.getBoundingClientRect().left;
    });
    expect(Math.abs(left)).toBeLessThan(1);
    await shelf.setViewportSize({ width: 1200, height: 900 });
  });
});

test('no view has a fault for axe or runs over a narrow window, light or dark', async () => {
  await addAll([...stories, { name: 'broken.pdf', content: 'none' }]);
  const views: readonly (readonly [string, string])[] = [
    ['add', '.shelf-failed'],
    ['texts', '.shelf-row'],
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
