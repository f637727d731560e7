import { readFile } from 'node:fs/promises';
import mammoth from 'mammoth';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { readPdf } from './read-pdf.ts';

let browser: TestBrowser;
let page: Page;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  for (const open of browser.context.pages().slice(1)) await open.close();
  page = await browser.context.newPage();
  await page.goto(browser.inside('lesson.html'));
  await page.evaluate(async () => {
    localStorage.clear();
    await chrome.storage.local.clear();
    await new Promise((resolve) => {
      indexedDB.deleteDatabase('desk').onsuccess = resolve;
    });
  });
  await open('plovers');
});

async function open(hash: string): Promise<void> {
  await page.goto(browser.inside(`lesson.html#${hash}`));
  await page.reload();
  await page.waitForSelector('.lesson-part');
}

const part = (name: string) => page.getByRole('region', { name, exact: true });
const words = (name: string) => part(name).locator('.lesson-blocks').textContent();
const setNumber = (seed: number) => page.getByLabel('Version').fill(String(seed));

/** A passage on the desk, put there as the desk itself does. */
async function addPassage(text: string): Promise<string> {
  await page.goto(browser.inside('desk.html'));
  await page.getByLabel('Text', { exact: true }).fill(text);
  await page.getByRole('button', { name: 'Make a passage' }).click();
  await page.waitForSelector('.cm-content');
  return new URL(page.url()).hash.split('/')[1]!;
}

describe('a sheet', () => {
  test('is the same for the same number and another for another', async () => {
    await setNumber(11);
    const first = await words('Building words');
    await setNumber(12);
    expect(await words('Building words')).not.toBe(first);
    await setNumber(11);
    expect(await words('Building words')).toBe(first);
  });

  test('keeps what is pinned through a new one, and all of it through a reload', async () => {
    await setNumber(11);
    const pinned = await words('Building words');
    const other = await words('Letter-sound review');
    await part('Building words').getByRole('button', { name: 'Pin' }).click();
    await setNumber(12);
    expect(await words('Building words')).toBe(pinned);
    expect(await words('Letter-sound review')).not.toBe(other);
    await open('plovers');
    expect(await words('Building words')).toBe(pinned);
    expect(await page.getByLabel('Version').inputValue()).toBe('12');
  });

  test('a part is made again alone', async () => {
    await setNumber(11);
    const building = await words('Building words');
    const letters = await words('Letter-sound review');
    await part('Letter-sound review').getByRole('button', { name: 'Shuffle' }).click();
    expect(await words('Letter-sound review')).not.toBe(letters);
    expect(await words('Building words')).toBe(building);
  });

  test('what the teacher writes stays, what cannot be read yet is said, and undo takes it back', async () => {
    const before = await words('Letter-sound review');
    await part('Letter-sound review').getByRole('button', { name: 'Edit' }).click();
    const field = part('Letter-sound review').getByLabel('Word, line 1').first();
    await field.fill('xylophone');
    await expect
      .poll(() => part('Letter-sound review').getByRole('status').textContent())
      .toMatch(/xylophone/);
    await part('Letter-sound review').getByRole('button', { name: 'Done' }).click();
    expect(await words('Letter-sound review')).toContain('xylophone');
    await setNumber(77);
    expect(await words('Letter-sound review')).toContain('xylophone');
    while (await page.getByRole('button', { name: 'Undo' }).isVisible())
      await page.getByRole('button', { name: 'Undo' }).click();
    expect(await words('Letter-sound review')).toBe(before);
  });

  test('a part is left out and put back', async () => {
    await part('Building words').getByRole('button', { name: 'Leave out' }).click();
    await page.getByRole('button', { name: 'Print…' }).click();
    const paper = page.locator('.lesson-paper');
    expect(await paper.textContent()).not.toContain('Building words');
    await page.keyboard.press('Escape');
    await part('Building words').getByRole('button', { name: 'Put back' }).click();
    await page.getByRole('button', { name: 'Print…' }).click();
    expect(await paper.textContent()).toContain('Building words');
  });
});

describe('on paper and in files', () => {
  /** The first word that pupils are to build. */
  const answer = async () =>
    ((await part('Building words').locator('.lesson-blank').first().textContent()) ?? '').trim();
  const print = async (audience: 'pupils' | 'key') => {
    await page.getByRole('button', { name: 'Print…' }).click();
    await page
      .locator('.print-side')
      .getByLabel(/^Sheet/)
      .selectOption(audience);
    const pages = await readPdf(await page.pdf({ preferCSSPageSize: true }));
    await page.keyboard.press('Escape');
    return pages.flatMap(({ lines }) => lines.map(({ text }) => text)).join('\n');
  };

  test('pupils get a line, the teacher the answer', async () => {
    const built = await answer();
    const base = await part('Building words').locator('tbody tr').first().locator('td').first().textContent();
    const [pupils, key] = [await print('pupils'), await print('key')];
    expect(key).toContain(built);
    expect(pupils).toContain(base!);
    expect(pupils.split(/\s+/)).not.toContain(built);
    expect(pupils).toContain('Name');
    expect(pupils).not.toContain('Shuffle');
  });

  test('the document opens again, with its tables', async () => {
    const built = await answer();
    await page.getByLabel(/^Sheet/).selectOption('key');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save for Word' }).click();
    const download = await saving;
    expect(download.suggestedFilename()).toMatch(/^Lesson.*Plovers\.docx$/);
    const { value } = await mammoth.convertToHtml({ buffer: await readFile((await download.path())!) });
    expect(value).toContain('<table>');
    expect(value).toContain(built);
  });

  test('the web page has the words as text, whatever they are', async () => {
    await part('Letter-sound review').getByRole('button', { name: 'Edit' }).click();
    await part('Letter-sound review').getByLabel('Word, line 1').first().fill('<img src=x onerror=alert(1)>');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as web page' }).click();
    const html = await readFile((await (await saving).path())!, 'utf8');
    expect(html).toContain('&lt;img src=x onerror=alert(1)&gt;');
    expect(html).not.toContain('<img');
    expect(html).toMatch(/^<!doctype html>/);
  });

  test('plain text has the parts in their order', async () => {
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as plain text' }).click();
    const text = await readFile((await (await saving).path())!, 'utf8');
    expect(text.indexOf('LETTER-SOUND REVIEW')).toBeGreaterThanOrEqual(0);
    expect(text.indexOf('BUILDING WORDS')).toBeGreaterThan(text.indexOf('LETTER-SOUND REVIEW'));
  });
});

test('around a passage its own words come first', async () => {
  const id = await addPassage(
    '# The gull\nThe gull was flapping and hopping and grabbing at the chips on the deck.',
  );
  await open(`plovers/${id}`);
  const building = part('Building words');
  await building.getByLabel('Pattern').selectOption('change-double');
  await expect.poll(() => words('Building words')).toMatch(/flapping/);
  expect(await words('Building words')).toMatch(/grabbing/);
});

test('a deleted passage takes its lesson with it', async () => {
  const id = await addPassage('The gull was flapping on the deck.');
  await open(`plovers/${id}`);
  await part('Building words').getByRole('button', { name: 'Pin' }).click();
  const kept = () =>
    page.evaluate(async () =>
      Object.keys(await chrome.storage.local.get(null)).filter((key) => key.startsWith('lesson/')),
    );
  await expect.poll(kept).toEqual([`lesson/plovers/${id}`]);
  await addPassage('Another text, so that the desk is not empty.');
  await page.goto(browser.inside(`desk.html#passage/${id}`));
  await page.reload();
  await page.getByText('Add source').click();
  await page.getByRole('button', { name: 'Delete this passage' }).click();
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await page.getByLabel('Text', { exact: true }).waitFor();
  await open('plovers');
  await expect.poll(kept).toEqual([]);
});

test.each(['light', 'dark'] as const)(
  'is clean to axe in %s, also while it is edited and on paper',
  async (scheme) => {
    await page.emulateMedia({ colorScheme: scheme });
    const check = async () => expect(await axeFaults(page)).toEqual([]);
    await check();
    // A pressed one is called Done.
    const edit = page.getByRole('button', { name: 'Edit' }).first();
    while (await edit.isVisible()) await edit.click();
    await check();
    await page.getByRole('button', { name: 'Print…' }).click();
    await check();
  },
);

test('by keyboard alone: another sheet, pinned and printed', async () => {
  await page.getByLabel('Version').focus();
  const before = await page.getByLabel('Version').inputValue();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  expect(await page.getByLabel('Version').inputValue()).not.toBe(before);
  await page.getByRole('button', { name: 'Print…' }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Print', exact: true }).waitFor();
  await page.keyboard.press('Escape');
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Print…');
});
