import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { texts } from '../pictures/tarn-quay-texts.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';

/**
 * Acts as a teacher in the built extension and counts the actions. Each of eight jobs must be done within a number of
 * actions. A click, a key press, a choice in a list, a paste, a chosen file and a text typed into a field count as one
 * action each. Pointer moves and scrolling do not count.
 */
interface Hand {
  readonly acts: () => number;
  click(on: Locator): Promise<void>;
  choose(from: Locator, option: string): Promise<void>;
  write(into: Locator, text: string): Promise<void>;
  give(to: Locator, files: Parameters<Locator['setInputFiles']>[0]): Promise<void>;
  /** Presses the extension's toolbar button. */
  press(page: Page): Promise<void>;
  /** Clicks a link that opens in a new tab. */
  follow(link: Locator): Promise<Page>;
}

let browser: TestBrowser;
const story = readFileSync(new URL('../../public/story/index.html', import.meta.url), 'utf8');

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(() => clearKept(browser));

function startHand(): Hand {
  let acts = 0;
  return {
    acts: () => acts,
    async click(on) {
      acts++;
      await on.click();
    },
    async choose(from, option) {
      acts++;
      await from.selectOption(option);
    },
    async write(into, text) {
      acts++;
      await into.fill(text);
    },
    async give(to, files) {
      acts++;
      await to.setInputFiles(files);
    },
    async press(page) {
      acts++;
      await browser.press(page);
    },
    async follow(link) {
      acts++;
      const opened = browser.context.waitForEvent('page');
      await link.click();
      return opened;
    },
  };
}

const openStory = () => browser.open(browser.serve('story.html', story));
const open = (address: string) => browser.open(browser.inside(address));
const reach = async (page: Page) =>
  Number.parseFloat((await page.locator('.reach-figure').first().textContent()) ?? '');

async function openShaded(): Promise<{ page: Page; panel: Page }> {
  const page = await openStory();
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  const panel = await browser.openPanel(page);
  await panel.locator('.gap').first().waitFor();
  return { page, panel };
}

describe('a teacher', () => {
  test('gets from installing to a shaded story in 4 actions', async () => {
    const page = await open('welcome.html');
    const hand = startHand();
    await hand.write(page.getByLabel('Group name'), 'Puffins');
    await hand.click(page.locator('.word-row').nth(3));
    await hand.click(page.getByRole('button', { name: 'Save group and open story' }));
    await page.getByRole('heading', { name: 'The Night the Lamp Went Out' }).waitFor();
    await hand.press(page);
    await page.waitForFunction(() => CSS.highlights.size > 0);
    expect(hand.acts()).toBeLessThanOrEqual(4);
  });

  test('checks a page and sees what five words lack in 3 actions', async () => {
    const page = await openStory();
    const hand = startHand();
    await hand.press(page);
    await page.waitForFunction(() => CSS.highlights.size > 0);
    const panel = await browser.openPanel(page);
    await panel.locator('.reach-figure').waitFor();
    const rows = panel.locator('.gap');
    await rows.first().waitFor();
    // The panel lists each word under its missing pattern without a further click.
    const shown = await rows.evaluateAll(
      (all) =>
        all.filter((row) => row.checkVisibility()).flatMap((row) => [...row.querySelectorAll('.word')])
          .length,
    );
    expect(shown).toBeGreaterThanOrEqual(5);
    await hand.click(rows.locator('.word').first());
    await panel.locator('.units').waitFor();
    expect(hand.acts()).toBeLessThanOrEqual(3);
  });

  test('corrects the list of taught patterns and undoes the correction in 2 actions', async () => {
    const { panel } = await openShaded();
    const before = await reach(panel);
    const hand = startHand();
    await hand.click(panel.locator('.gap').first().getByRole('checkbox'));
    await expect.poll(() => reach(panel)).toBeGreaterThan(before);
    await hand.click(panel.getByRole('button', { name: 'Undo' }));
    await expect.poll(() => reach(panel)).toBe(before);
    expect(hand.acts()).toBeLessThanOrEqual(2);
  });

  test('pastes sixty rows and makes a group follow them in 8 actions', async () => {
    const rows = sixtyRows();
    const page = await open('groups.html');
    const hand = startHand();
    await hand.click(page.getByRole('link', { name: 'Paste a sequence' }));
    await hand.write(page.getByLabel('Your scope and sequence'), rows);
    await hand.choose(page.getByLabel('Group', { exact: true }), 'herons');
    await hand.choose(page.getByLabel('Last step taught'), '30');
    await hand.click(page.getByRole('button', { name: 'Use this sequence' }));
    await expect.poll(() => page.getByLabel('Last step taught').inputValue()).toBe('30');
    expect(await page.getByLabel('Last step taught').locator('option').count()).toBeGreaterThanOrEqual(60);
    expect(hand.acts()).toBeLessThanOrEqual(8);
  });

  test('adapts a found story for two groups in 12 actions', async () => {
    const { panel } = await openShaded();
    const hand = startHand();
    const desk = await hand.follow(panel.getByRole('link', { name: 'Edit this text' }));
    await desk.locator('.desk-beyond').first().waitFor();
    const adapt = async (): Promise<void> => {
      const before = await reach(desk);
      await hand.click(desk.getByRole('button', { name: 'Propose changes' }));
      await hand.click(desk.getByRole('button', { name: 'Tick all' }));
      await hand.click(desk.getByRole('button', { name: 'Make ticked changes' }));
      await expect.poll(() => reach(desk)).toBeGreaterThan(before);
    };
    await hand.click(desk.getByText('Plan changes', { exact: true }));
    await adapt();
    await hand.choose(desk.locator('#desk-group'), 'plovers');
    await desk.getByRole('textbox', { name: 'Text for Plovers' }).waitFor();
    await hand.choose(desk.locator('#plan-target'), '100');
    await adapt();
    expect(hand.acts()).toBeLessThanOrEqual(12);
  });

  test('gets the day’s lesson ready to print in 3 actions', async () => {
    const { panel } = await openShaded();
    const hand = startHand();
    const desk = await hand.follow(panel.getByRole('link', { name: 'Edit this text' }));
    const lesson = await hand.follow(desk.getByRole('link', { name: 'Make a lesson' }));
    await lesson.locator('.lesson-part').first().waitFor();
    await hand.click(lesson.getByRole('button', { name: 'Print…' }));
    await lesson.locator('.print-side').waitFor();
    expect(hand.acts()).toBeLessThanOrEqual(3);
  });

  test('learns which of thirty texts fit which group in 4 actions', async () => {
    const page = await open('shelf.html');
    const hand = startHand();
    await hand.click(page.getByRole('link', { name: 'Add texts' }));
    await hand.give(
      page.getByLabel(/^Choose texts/),
      Array.from({ length: 30 }, (_, i) => ({
        name: `Text ${i + 1}.txt`,
        mimeType: 'text/plain',
        buffer: Buffer.from(`# Text ${i + 1}\n\nPart ${i + 1}. ${texts[i % texts.length]!.text}`),
      })),
    );
    await page.getByText('30 read.').waitFor({ timeout: 30_000 });
    await hand.click(page.getByRole('link', { name: 'Texts by group' }));
    await expect.poll(() => page.locator('tbody tr').count()).toBeGreaterThanOrEqual(30);
    expect(hand.acts()).toBeLessThanOrEqual(4);
  });

  test('saves everything and restores it in another browser in 5 actions', async () => {
    const page = await open('groups.html');
    await page.getByLabel('Group name').fill('Puffins');
    await page.getByLabel('Group name').blur();
    await page.getByRole('link', { name: 'Puffins' }).waitFor();
    const hand = startHand();
    await hand.click(page.getByRole('link', { name: 'Save or open a file' }));
    const saving = page.waitForEvent('download');
    await hand.click(page.getByRole('button', { name: 'Save everything' }));
    const file = await (await saving).path();
    const whole = readFileSync(file, 'utf8');
    await clearKept(browser);
    const other = await open('groups.html');
    await hand.click(other.getByRole('link', { name: 'Save or open a file' }));
    await hand.give(other.locator('input[type=file]'), {
      name: 'wordreach-everything.jsonl',
      mimeType: 'application/jsonl',
      buffer: Buffer.from(whole),
    });
    await hand.click(other.getByRole('button', { name: 'Replace everything here' }));
    await other.getByRole('link', { name: 'Puffins' }).waitFor();
    expect(hand.acts()).toBeLessThanOrEqual(5);
  });
});

/** Returns a scope and sequence of sixty weeks, in the form that a spreadsheet copies to the clipboard. */
function sixtyRows(): string {
  const path = new URL('../../profiles/sequences/england-2013.json', import.meta.url);
  const { steps } = JSON.parse(readFileSync(path, 'utf8')) as { steps: { title: string }[] };
  return steps
    .slice(0, 60)
    .map(({ title }, i) => `${i + 1}\t${title.replace(/^[^:]*: /, '')}`)
    .join('\n');
}
