import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';
import { readPdf } from './read-pdf.ts';

let browser: TestBrowser;
/**
 * The page is opened only once, since the first lesson of a page takes long. Each test leaves the page usable for the
 * next test, or has it opened again.
 */
let page: Page;
let isOpen = false;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  if (isOpen) return;
  await clearKept(browser);
  page = await browser.open(browser.inside('lesson.html#plovers'));
  await page.waitForSelector('.lesson-part');
  isOpen = true;
});
afterEach(({ task }) => {
  if (task.result?.state === 'fail') isOpen = false;
});

const part = (name: string) => page.getByRole('region', { name, exact: true });
const setNumber = (seed: number) => page.getByLabel('Version').fill(String(seed));

describe('a lesson on paper and in files', () => {
  /** Returns the first word that pupils are to build. */
  const answer = async () =>
    ((await part('Building words').locator('.lesson-blank').first().textContent()) ?? '').trim();
  const print = async (audience: 'pupils' | 'key') => {
    await page.getByRole('button', { name: 'Print…' }).click();
    const sheet = page.locator('.print-side').getByLabel(/^Sheet/);
    const usual = await sheet.inputValue();
    await sheet.selectOption(audience);
    const pages = await readPdf(await page.pdf({ preferCSSPageSize: true }));
    await sheet.selectOption(usual);
    await page.keyboard.press('Escape');
    return pages.flatMap(({ lines }) => lines.map(({ text }) => text)).join('\n');
  };

  test('gives pupils a line and the teacher the answer', async () => {
    const built = await answer();
    const base = await part('Building words').locator('tbody tr').first().locator('td').first().textContent();
    const [pupils, key] = [await print('pupils'), await print('key')];
    expect(key).toContain(built);
    expect(pupils).toContain(base!);
    expect(pupils.split(/\s+/)).not.toContain(built);
    expect(pupils).toContain('Name');
    expect(pupils).not.toContain('Shuffle');
  });

  test('has its words as plain text on the saved web page, even if a word is markup', async () => {
    await part('Letter-sound review').getByRole('button', { name: 'Edit' }).click();
    await part('Letter-sound review').getByLabel('Word, line 1').first().fill('<img src=x onerror=alert(1)>');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as web page' }).click();
    const html = await readFile((await (await saving).path())!, 'utf8');
    expect(html).toContain('&lt;img src=x onerror=alert(1)&gt;');
    expect(html).not.toContain('<img');
    expect(html).toMatch(/^<!doctype html>/);
    // The changed word stays on the sheet and makes the next sheets longer, so the page is opened again.
    isOpen = false;
  });
});

test('a lesson in one page fits one page on either paper, whatever its words', async () => {
  for (const version of [11, 12, 13]) {
    await setNumber(version);
    await page.getByLabel('Preset').selectOption('A lesson in one page');
    await page.getByRole('button', { name: 'Print…' }).click();
    for (const paper of ['a4', 'letter']) {
      await page
        .locator('.print-side')
        .getByLabel(/^Paper/)
        .selectOption(paper);
      expect(await readPdf(await page.pdf({ preferCSSPageSize: true })), paper).toHaveLength(1);
    }
    await page.keyboard.press('Escape');
    await page.getByLabel('Preset').selectOption('');
  }
});

test('the keyboard alone makes another version, opens the print view and returns', async () => {
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

test('a lesson has no axe faults in light or dark, while edited or on paper', async () => {
  const check = async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      expect(await axeFaults(page)).toEqual([]);
    }
  };
  await check();
  await page.locator('.lesson-parts summary').click();
  // A pressed Edit button changes its name to Done.
  const edit = page.getByRole('button', { name: 'Edit' }).first();
  while (await edit.isVisible()) await edit.click();
  await check();
  await page.getByRole('button', { name: 'Print…' }).click();
  await check();
  await page.keyboard.press('Escape');
  await page.locator('.lesson-parts summary').click();
  await page.emulateMedia({ colorScheme: null, reducedMotion: null });
});

test('cards to cut out fill one page, six or twelve to a page', async () => {
  await page.locator('.lesson-parts summary').click();
  const on = page.locator('.lesson-parts input:checked');
  while ((await on.count()) > 0) await on.first().uncheck();
  await page
    .locator('.lesson-parts')
    .getByLabel(/^Cards to cut out/)
    .check();
  for (const size of ['12', '6']) {
    await part('Cards to cut out').getByLabel('Cards on a page').selectOption(size);
    await page.getByRole('button', { name: 'Print…' }).click();
    expect(await page.locator('.lesson-paper li').count()).toBe(Number(size));
    expect(await readPdf(await page.pdf({ preferCSSPageSize: true }))).toHaveLength(1);
    await page.keyboard.press('Escape');
  }
});
