import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';
import { markedWords } from './marked-words.ts';
import { openFolds } from './open-folds.ts';

let browser: TestBrowser;
let view: Page;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

beforeEach(async () => {
  await clearKept(browser);
  view = await openGroups();
  await readable();
});

async function openGroups(hash = ''): Promise<Page> {
  const opened = await browser.context.newPage();
  await opened.goto(browser.inside(`groups.html${hash}`));
  return opened;
}

/** Expects no axe faults in light or dark, and nothing wider than a narrow window. */
async function expectSound(part?: string): Promise<void> {
  await view.setViewportSize({ width: 360, height: 800 });
  for (const colorScheme of ['light', 'dark'] as const) {
    await view.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    expect(await axeFaults(view, part)).toEqual([]);
    expect(await view.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  }
  await view.setViewportSize({ width: 1100, height: 900 });
}

/** Returns how many of the most common words the group can read, according to the page. */
async function readable(): Promise<number> {
  const sentence = view.getByText('most common words', { exact: false }).locator('strong');
  return Number(await sentence.textContent());
}

async function names(): Promise<string[]> {
  return view.getByRole('navigation').locator('a[href^="#group"]').allTextContents();
}

describe('a group', () => {
  test('can be opened from the panel', async () => {
    const story = await browser.open(
      browser.serve('ship.html', '<title>Ship</title><p>A ship in the bay.</p>'),
    );
    const panel = await browser.openPanel(story);
    await openFolds(panel);
    const opened = browser.context.waitForEvent('page');
    await panel.getByRole('link', { name: 'Edit groups' }).click();
    const page = await opened;
    await page.getByRole('heading', { name: 'Groups', level: 1 }).waitFor();
    expect(await page.getByLabel('Group name').inputValue()).toBe('Herons');
  });

  test('gets patterns, exceptions, words and names by keyboard alone', async () => {
    const before = await readable();
    await view.getByLabel('Taught early').focus();
    await view.keyboard.type('/ow/');
    await view.getByRole('button', { name: 'ou as in cloud' }).waitFor();
    await view.keyboard.press('Escape');
    await view.keyboard.type('rain');
    await view.keyboard.press('Enter');
    await view.getByRole('button', { name: 'Remove ai as in rain' }).waitFor();
    expect(await view.evaluate(() => document.activeElement?.localName)).toBe('input');
    await expect.poll(readable).toBeGreaterThan(before);

    await view.getByLabel('Taught but not secure').focus();
    await view.keyboard.type('shell');
    await view.keyboard.press('Enter');
    await view.getByRole('button', { name: 'Remove sh as in shell' }).waitFor();
    await view.keyboard.press('Shift+Tab');
    await view.keyboard.press('Enter');
    await view.getByRole('button', { name: 'Remove sh as in shell' }).waitFor({ state: 'detached' });

    await view.getByLabel('By-sight words', { exact: true }).fill('would, could\nshould their');
    await view.getByLabel('Names').fill('Mr. Falk; Otto');
    await view.getByLabel('Taught early').focus();
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
      names: ['Mr', 'Falk', 'Otto'],
      notYet: [],
    });
  });

  test('is used for checking pages once it is chosen', async () => {
    await view.getByRole('link', { name: 'Plovers' }).click();
    await view.getByRole('button', { name: 'Use this group' }).click();
    await view.getByText('In use: pages are shaded for this group.').waitFor();
    const story = await browser.open(
      browser.serve('ship.html', '<title>Ship</title><p>A ship in the bay.</p>'),
    );
    const panel = await browser.openPanel(story);
    await panel.locator('.group-name').waitFor();
    expect(await panel.locator('.group-name').textContent()).toBe('Plovers');
  });
});

describe('a sequence', () => {
  const titles = () => view.locator('.step-name').allTextContents();
  const through = async (): Promise<string> => {
    const stored = await view.evaluate(async () => {
      const { groups } = (await chrome.storage.local.get('groups')) as {
        groups?: { groups: { herons: { sequence: string; step: number } } };
      };
      return groups?.groups.herons;
    });
    return stored ? `${stored.sequence} ${stored.step}` : 'as it was';
  };
  const step = (title: string) => view.locator('.step-row').filter({ hasText: title }).first();

  beforeEach(async () => {
    await view.getByRole('link', { name: 'Adapt its steps' }).click();
    await view.getByText('This starter comes with Wordreach and stays as it is.').waitFor();
  });

  test('can be split, merged and sorted by keyboard, and the groups keep their place', async () => {
    await step('Short i, n, f').getByRole('button', { name: 'Move step 3 up' }).press('Enter');
    await expect.poll(async () => (await titles())[1]).toBe('Short i, n, f');
    expect(await view.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
      'Move step 2 up',
    );
    await view.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => (await titles())[2]).toBe('Short i, n, f');
    await step('Short i, n, f').getByRole('button', { expanded: false }).press('Enter');
    await view.getByRole('button', { name: 'Split in two' }).press('Enter');
    await expect.poll(through).toBe('steady-steps-ours 25');
    expect((await titles())[3]).toBe('f as in fog; -an as in tan');
    await view.keyboard.press('Alt+ArrowDown');
    await expect.poll(async () => (await titles())[2]).toBe('f as in fog; -an as in tan');
    await view.keyboard.press('Alt+ArrowUp');
    await expect.poll(async () => (await titles())[3]).toBe('f as in fog; -an as in tan');
    await view.getByRole('button', { name: 'Merge with next' }).press('Enter');
    await expect.poll(through).toBe('steady-steps-ours 24');
    for (let i = 0; i < 3; i++) await view.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(through).toBe('steady-steps-ours 25');
  });

  test('can be sorted by dragging a step by its handle', async () => {
    await step('p, c').locator('.handle').dragTo(step('Short o, h, d'));
    await expect
      .poll(async () => (await titles()).slice(1, 4))
      .toEqual(['Short i, n, f', 'Short o, h, d', 'p, c']);
  });
});

const plan = [
  'Our phonics plan',
  'Step\tPhonics\tSight words',
  '1\tm, s, t, short a\tthe, a',
  '2\tp, n, short i, d\tis',
  '3\tsh, ch\tthey',
  '4\tsounds of the harbour\tof',
  '5\tow\tsaid',
].join('\n');

describe('a pasted sequence', () => {
  test('is understood, corrected and used, and a page is shaded for it', async () => {
    await view.getByRole('link', { name: 'Paste a sequence' }).click();
    await view.getByLabel('Your scope and sequence').fill(plan);
    const settle = view.getByRole('group', { name: 'sounds of the harbour' });
    await settle.getByText('not understood').waitFor();
    await settle.getByLabel('Teaches').fill('rock');
    await settle.getByLabel('Teaches').press('Enter');
    await settle.getByText('your choice').waitFor();
    await view.getByRole('group', { name: 'ow' }).getByRole('button', { name: 'Guess is right' }).click();
    await view.getByLabel('Sequence name').fill('Harbour plan');
    await view.getByLabel('Group', { exact: true }).selectOption('Plovers');
    await view.getByRole('button', { name: 'Use this sequence' }).click();

    // The test waits for the page of the group, because the page before has a choice of the same name.
    await view.getByLabel('Group name').waitFor();
    await view.getByLabel('Last step taught').selectOption('3');
    await view.getByText('Taught now: sh as in shell').waitFor();
    await view.getByRole('button', { name: 'Use this group' }).click();
    await view.getByText('In use: pages are shaded for this group.').waitFor();

    const story = await browser.open(
      browser.serve('ship.html', '<title>Ship</title><p>A ship is in the mist. They sat on a green rug.</p>'),
    );
    await browser.press(story);
    await story.waitForFunction(() => CSS.highlights.size > 0);
    const { fresh, beyond } = await markedWords(story);
    expect(fresh).toContain('ship');
    expect(beyond).toContain('green');
    expect(beyond).not.toContain('They');
    const panel = await browser.openPanel(story);
    // The panel may be drawn again while its folded parts are opened.
    await expect
      .poll(async () => {
        await openFolds(panel);
        return panel.getByText('in Harbour plan').isVisible();
      })
      .toBe(true);

    // A change of the sequence's steps makes the extension shade the open page again.
    await view.bringToFront();
    await view.getByRole('link', { name: 'Change its steps' }).click();
    await view.locator('[data-act=open]').first().click();
    for (const typed of ['gr', 'feet', 'goat', 'rope']) {
      const chips = await view.locator('.chip').count();
      await view.getByLabel('Teaches').fill(typed);
      await view.getByLabel('Teaches').press('Enter');
      await expect.poll(() => view.locator('.chip').count()).toBe(chips + 1);
    }
    await expect.poll(async () => (await markedWords(story)).beyond).not.toContain('green');
  });
});

describe('the page has no axe faults and fits a narrow window', () => {
  test('with a group, its decoding rules, its common words, a search and its history', async () => {
    await view.getByLabel('Last step taught').selectOption('40');
    await view.getByRole('heading', { name: 'History' }).waitFor();
    await view.getByText('Decoding rules').click();
    await view.getByLabel('Taught early').fill('ai');
    await view.getByText('Common words not yet readable').click();
    await expectSound();
  });

  test('with a sequence, an open step and warnings about the step', async () => {
    await view.getByRole('link', { name: 'Adapt its steps' }).click();
    const row = view.locator('.step-row').filter({ hasText: 'Short i, n, f' }).first();
    await row.getByRole('button', { expanded: false }).click();
    await view.getByLabel('By-sight words', { exact: true }).fill('the fin');
    await view.getByLabel('Title').focus();
    await view.getByText('Already decodable at this step: “fin”').waitFor();
    await view.getByText('patterns not in this sequence').click();
    await expectSound();
  });

  test('with a pasted sequence, its columns, the patterns never taught and a chosen piece', async () => {
    await view.getByRole('link', { name: 'Paste a sequence' }).click();
    await view.getByLabel('Your scope and sequence').fill(plan);
    await view.getByRole('group', { name: 'sounds of the harbour' }).getByText('not understood').waitFor();
    await view.locator('.column-kinds').waitFor();
    await view.locator('.never-taught').waitFor();
    await view.getByRole('button', { name: 'ch', exact: true }).click();
    await view.getByRole('group', { name: 'ch step' }).getByText('ch as in chest').first().waitFor();
    await expectSound();
  });

  test('with the files section and copies in the browser account', async () => {
    await view.getByRole('button', { name: 'New group' }).click();
    await expect.poll(names).toContain('New group');
    await view.getByRole('link', { name: 'Save or open a file' }).click();
    await view.getByLabel('Copy groups and sequences to my browser account').check();
    await expect
      .poll(() => view.evaluate(async () => Object.keys(await chrome.storage.sync.get()).sort()))
      .toEqual(['group:group-1', 'group:herons', 'group:plovers']);
    await expectSound();
  });
});

describe('a file', () => {
  const file = (text: string) => ({
    name: 'plan.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });

  beforeEach(async () => {
    await view.getByRole('link', { name: 'Adapt its steps' }).click();
    await view.getByRole('button', { name: 'Move step 3 up' }).click();
    await view.getByRole('link', { name: 'Steady steps, ours' }).waitFor();
    await view.getByRole('link', { name: 'Save or open a file' }).click();
    await view.getByRole('heading', { name: 'Open a file' }).waitFor();
  });

  async function save(): Promise<string> {
    const download = view.waitForEvent('download');
    await view.getByRole('button', { name: 'Save the file' }).click();
    return readFileSync(await (await download).path(), 'utf8');
  }

  test('carries groups and their sequence to another browser, without names', async () => {
    await view.getByLabel('Plovers').uncheck();
    const text = await save();
    expect(text).not.toContain('Wilma');
    await view.evaluate(() => chrome.storage.local.clear());
    await view.reload();
    await view.getByLabel('Choose a file, or drop it here').setInputFiles(file(text));
    await view.getByRole('button', { name: 'Keep both' }).click();
    await view.getByText('Added: 1 group and 1 sequence of your own.', { exact: true }).waitFor();
    await expect.poll(names).toEqual(['Herons', 'Herons 2', 'Plovers']);
    await expectSound('main');
    await view.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(names).toEqual(['Herons', 'Plovers']);
    await expect.poll(() => view.getByRole('link', { name: 'Steady steps, ours' }).count()).toBe(0);
  });

  test('is read when it is dropped on the page', async () => {
    const text = await save();
    const dropped = await view.evaluateHandle((content) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([content], 'plan.json'));
      return transfer;
    }, text);
    await view.locator('.drop').dispatchEvent('drop', { dataTransfer: dropped });
    await view.getByText('You already have everything in this file.', { exact: true }).waitFor();
  });
});
