import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';

let browser: TestBrowser;
let page: Page;

// Starting the browser waits for the first page, which opens by itself after installing.
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  for (const open of browser.context.pages().slice(1)) await open.close();
  page = await browser.open(browser.inside('welcome.html'));
  await page.evaluate(() => chrome.storage.local.clear());
  await page.reload();
  await page.getByRole('heading', { name: 'Who is reading, and how far are they?' }).waitFor();
});

const keep = () => page.getByRole('button', { name: 'Save group and open story' }).click();
const marks = (view: Page) =>
  view.evaluate(() => [...CSS.highlights.values()].reduce((sum, { size }) => sum + size, 0));

describe('the first page', () => {
  test('saves a group and leads to a story that the button shades for the group', async () => {
    await page.getByRole('radio', { name: /^Second tide/ }).check();
    await page.getByLabel('Group name').fill('Puffins');
    await page.getByRole('radio', { name: /step 8$/i }).check();
    expect(await page.getByLabel('Or, instead of a row: last step taught').inputValue()).toBe('8');
    await page.getByLabel('Or, instead of a row: last step taught').selectOption('10');
    await keep();
    await page.getByRole('heading', { name: 'The Night the Lamp Went Out' }).waitFor();
    expect(await marks(page)).toBe(0);
    await browser.press(page);
    await page.getByText('Rest the pointer on a shaded word').waitFor();
    await page.waitForFunction(() => CSS.highlights.size > 0);
    const panel = await browser.openPanel(page);
    await panel.locator('.reach').waitFor();
    expect(
      await panel
        .locator('select')
        .first()
        .evaluate((one: HTMLSelectElement) => one.selectedOptions[0]!.text),
    ).toBe('Puffins');
    await panel.getByText('Step 10 of 40').waitFor();
    await browser.press(page);
    await page.getByText('Now press the Wordreach button').waitFor();
    await expect.poll(() => marks(page)).toBe(0);
    await panel.getByRole('button', { name: 'Shade this page' }).click();
    await page.waitForFunction(() => CSS.highlights.size > 0);
  });

  test('asks for a name, and saves nothing without one', async () => {
    await keep();
    await page.getByRole('alert').getByText('Give the group a name first.').waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('welcome-name');
    expect(await page.evaluate(() => chrome.storage.local.get('groups'))).toEqual({});
  });

  test('asks for a row of words or a step, and starts with none chosen', async () => {
    await page.getByLabel('Group name').fill('Puffins');
    await page.getByRole('group', { name: /^Which of these words/ }).waitFor();
    expect(await page.locator('.word-row :checked').count()).toBe(0);
    await keep();
    await page.getByRole('alert').getByText('First choose the last row').waitFor();
    expect(await page.evaluate(() => document.activeElement?.closest('.word-row') !== null)).toBe(true);
  });

  test('shows an error when the group cannot be saved', async () => {
    await page.getByLabel('Group name').fill('Puffins');
    await page.getByLabel('Or, instead of a row: last step taught').selectOption('4');
    await page.evaluate(() => {
      chrome.storage.local.set = () => Promise.reject(new Error('no room'));
    });
    await keep();
    await page.getByRole('alert').getByText('The group was not saved:').waitFor();
    expect(await page.getByLabel('Group name').inputValue()).toBe('Puffins');
  });

  test('offers a sequence that was pasted in another tab', async () => {
    const opening = browser.context.waitForEvent('page');
    await page.getByRole('link', { name: 'Paste your own scope and sequence' }).click();
    const paste = await opening;
    await paste.getByLabel('Your scope and sequence').fill('Week 1: m, s, t, short a\nWeek 2: p, n, short i');
    await paste
      .getByRole('button', { name: /^Keep|^Save|^Use/ })
      .first()
      .click();
    await page.getByRole('radio', { name: /your own/ }).waitFor();
  });

  test('can be skipped to use the demo groups', async () => {
    await page.getByRole('link', { name: /^Skip this/ }).click();
    await page.getByRole('heading', { name: 'The Night the Lamp Went Out' }).waitFor();
  });

  test.each(['welcome.html', 'practice.html'])(
    '%s has no axe faults in light or dark, and fits 320 px',
    async (address) => {
      const view = await browser.open(browser.inside(`${address}`));
      await view.locator('main :is(article, form)').waitFor();
      for (const colorScheme of ['light', 'dark'] as const) {
        await view.emulateMedia({ colorScheme });
        expect(await axeFaults(view)).toEqual([]);
      }
      await view.setViewportSize({ width: 320, height: 640 });
      expect(await view.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    },
  );
});
