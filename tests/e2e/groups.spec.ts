import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { startBrowser, type TestBrowser } from './browser.ts';

let browser: TestBrowser;
let view: Page;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

beforeEach(async () => {
  for (const open of browser.context.pages().slice(1)) await open.close();
  view = await openGroups();
  await view.evaluate(() => chrome.storage.local.clear());
  await view.reload();
  await readable();
});

async function openGroups(hash = ''): Promise<Page> {
  const opened = await browser.context.newPage();
  await opened.goto(`chrome-extension://${browser.id}/groups.html${hash}`);
  return opened;
}

async function faults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page: page as never }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

/** No fault for axe in light and dark, and nothing wider than a narrow window. */
async function expectSound(): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await view.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await view.setViewportSize({ width: 360, height: 800 });
    expect(await faults(view)).toEqual([]);
    expect(await view.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  }
  await view.setViewportSize({ width: 1100, height: 900 });
}

/** How many of the commonest words the group can read, as the page says. */
async function readable(): Promise<number> {
  const sentence = view.getByText('commonest words', { exact: false }).locator('strong');
  return Number(await sentence.textContent());
}

async function names(): Promise<string[]> {
  return view.getByRole('navigation').locator('li a').allTextContents();
}

describe('a group', () => {
  test('is reached from the panel', async () => {
    const story = await browser.open(
      browser.serve('ship.html', '<title>Ship</title><p>A ship in the bay.</p>'),
    );
    const panel = await browser.openPanel(story);
    const opened = browser.context.waitForEvent('page');
    await panel.getByRole('link', { name: 'Edit groups' }).click();
    const page = await opened;
    await page.getByRole('heading', { name: 'Groups', level: 1 }).waitFor();
    expect(await page.getByLabel('Name of the group').inputValue()).toBe('Herons');
  });

  test('is shown without faults', async () => {
    await view.getByText('How words are judged').click();
    await view.getByLabel('Also taught').fill('ai');
    await view.getByText('The commonest words they cannot read yet').click();
    await expectSound();
  });

  test('is added, renamed, copied and deleted, and each can be undone', async () => {
    await view.getByRole('button', { name: 'New group' }).click();
    const name = view.getByLabel('Name of the group');
    await expect.poll(() => name.inputValue()).toBe('New group');
    await name.fill('  Terns ');
    await name.press('Enter');
    await expect.poll(names).toEqual(['Herons', 'Plovers', 'Terns']);
    await view.getByRole('button', { name: 'Copy' }).click();
    await expect.poll(names).toEqual(['Herons', 'Plovers', 'Terns', 'Terns (copy)']);
    await view.getByRole('link', { name: 'Herons' }).click();
    await view.getByRole('button', { name: 'Delete' }).click();
    await expect.poll(names).toEqual(['Plovers', 'Terns', 'Terns (copy)']);
    expect(await view.getByRole('status').first().textContent()).toContain('Deleted Herons.');
    await view.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(names).toEqual(['Herons', 'Plovers', 'Terns', 'Terns (copy)']);
    await view.keyboard.press('Control+z');
    await expect.poll(names).toEqual(['Herons', 'Plovers', 'Terns']);
  });

  test('reads more at a later step, and what it could read on a day before is still known', async () => {
    const before = await readable();
    await view.getByLabel('Taught through').selectOption('40');
    await expect.poll(readable).toBeGreaterThan(before);
    await view.getByRole('heading', { name: 'History' }).waitFor();
    await view.getByLabel('as of').fill('2020-01-01');
    await expect.poll(readable).toBe(before);
    await expectSound();
    await view.reload();
    expect(await view.getByLabel('Taught through').inputValue()).toBe('40');
  });

  test('is given patterns, exceptions, words and names by keyboard alone', async () => {
    const before = await readable();
    await view.getByLabel('Also taught').focus();
    await view.keyboard.type('/ow/');
    await view.getByRole('button', { name: 'ou as in cloud' }).waitFor();
    await view.keyboard.press('Escape');
    await view.keyboard.type('rain');
    await view.keyboard.press('Enter');
    await view.getByRole('button', { name: 'Take out ai as in rain' }).waitFor();
    expect(await view.evaluate(() => document.activeElement?.localName)).toBe('input');
    await expect.poll(readable).toBeGreaterThan(before);

    await view.getByLabel('Not yet, after all').focus();
    await view.keyboard.type('ship');
    await view.keyboard.press('Enter');
    await view.keyboard.press('Shift+Tab');
    await view.keyboard.press('Enter');
    await view.getByRole('button', { name: 'Take out sh as in ship' }).waitFor({ state: 'detached' });

    await view.getByLabel('By-sight words').fill('would, could\nshould their');
    await view.getByLabel('Names').fill('Mr. Falk; Odd');
    await view.getByLabel('Also taught').focus();
    const stored = async () =>
      view.evaluate(async () => {
        const { groups } = (await chrome.storage.local.get('groups')) as {
          groups: { groups: { herons: { bySight: string[]; names: string[]; notYet: string[] } } };
        };
        const { bySight, names, notYet } = groups.groups.herons;
        return { bySight, names, notYet };
      });
    await expect.poll(stored).toEqual({
      bySight: ['would', 'could', 'should', 'their'],
      names: ['Mr', 'Falk', 'Odd'],
      notYet: [],
    });
  });

  test('is checked against once it is chosen', async () => {
    await view.getByRole('link', { name: 'Plovers' }).click();
    await view.getByRole('button', { name: 'Check pages for this group' }).click();
    await view.getByText('Pages are checked for this group.').waitFor();
    const story = await browser.open(
      browser.serve('ship.html', '<title>Ship</title><p>A ship in the bay.</p>'),
    );
    const panel = await browser.openPanel(story);
    await panel.getByText('Edit groups').waitFor();
    expect(await panel.locator('.group-name option:checked').textContent()).toBe('Plovers');
  });
});
