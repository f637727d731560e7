import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { browserPage, onlyIn, startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';
import { markedWords } from './marked-words.ts';
import { openFolds } from './open-folds.ts';

let browser: TestBrowser;
let page: Page;
let panel: Page;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

const story = readFileSync(new URL('../../public/story/index.html', import.meta.url), 'utf8');

beforeEach(async () => {
  await clearKept(browser);
  page = await browser.open(browser.serve('story.html', story));
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  panel = await browser.openPanel(page);
  await panel.waitForSelector('.missing');
  await openFolds(panel);
});

/** Returns the text beside the focused checkbox. */
async function focused(): Promise<string> {
  return panel.evaluate(() => document.activeElement?.parentElement?.textContent?.trim() ?? '');
}

async function reach(): Promise<number> {
  return Number.parseFloat((await panel.locator('.reach-figure').textContent()) ?? '');
}

/** Returns the number of words marked as not yet decodable, in either strength. */
const beyond = async (): Promise<number> => (await markedWords(page)).beyond.length;

describe('the panel for the bundled story', () => {
  test('shows the reach, and has no axe faults in light, dark or narrow, with the rules and a word open', async () => {
    expect(await panel.locator('.page-title').textContent()).toBe('The Night the Lamp Went Out');
    expect(await reach()).toBeGreaterThan(70);
    await panel.getByText('Decoding rules').click();
    await panel.getByRole('button', { name: 'should', exact: true }).first().click();
    await panel.getByRole('region', { name: 'The word should' }).waitFor();
    await panel.setViewportSize({ width: 320, height: 800 });
    for (const colorScheme of ['light', 'dark'] as const) {
      await panel.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      expect(await axeFaults(panel)).toEqual([]);
      expect(await panel.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    }
  });

  test('shades the page again when a pattern is ticked as taught, and again when it is unticked', async () => {
    const before = await reach();
    const marked = (await markedWords(page)).beyond;
    expect(marked).toContain('light');
    await panel.getByRole('listitem').filter({ hasText: 'igh as in light' }).getByRole('checkbox').click();
    await expect.poll(beyond).toBeLessThan(marked.length);
    expect((await markedWords(page)).beyond).not.toContain('light');
    await panel.getByRole('heading', { name: 'Taught early' }).waitFor();
    await expect.poll(reach).toBeGreaterThan(before);
    expect(await axeFaults(panel)).toEqual([]);
    // The ticked row stays in its place, struck through, and its checkbox keeps the keyboard focus.
    expect(await focused()).toBe('Mark as taught: igh as in light');
    await panel.locator('.gap-taught').getByText('Taught for this group, in every text.').waitFor();

    await panel.getByRole('region', { name: 'Taught early' }).getByRole('checkbox').click();
    await expect.poll(beyond).toBe(marked.length);
    await panel.waitForFunction(
      (figure) => document.querySelector('.reach-figure')?.textContent === figure,
      `${before.toFixed(1)}%`,
    );
    expect(await panel.evaluate(() => document.activeElement?.localName)).toMatch(/^(?:input|main)$/);
  });

  test('goes to the place of a word and splits the word into its units', async () => {
    await panel.getByRole('button', { name: 'winding', exact: true }).first().click();
    const card = panel.getByRole('region', { name: 'The word winding' });
    await card.waitFor();
    expect(await card.locator('.unit-letters').allTextContents()).toEqual(['w', 'i', 'n', 'd', 'ing']);
    expect(await card.textContent()).toContain('wind + ing');
    await page.waitForFunction(() => CSS.highlights.get('wr-4')?.size === 1);
    expect(await axeFaults(panel)).toEqual([]);

    await card.getByRole('button', { name: 'close' }).press('Escape');
    await card.waitFor({ state: 'detached' });
    expect(await panel.evaluate(() => document.activeElement?.textContent)).toBe('winding');
  });

  test('goes to the next place of a word that is pressed again', async () => {
    const word = panel.getByRole('listitem').getByRole('button', { name: 'light', exact: true });
    const pointedAt = async (): Promise<number> => {
      await page.waitForFunction(() => CSS.highlights.get('wr-4')?.size === 1);
      return page.evaluate(() => {
        const [range] = CSS.highlights.get('wr-4')!;
        const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        let before = range!.startOffset;
        while (words.nextNode() && words.currentNode !== range!.startContainer) {
          before += words.currentNode.nodeValue!.length;
        }
        return before;
      });
    };
    await word.click();
    const first = await pointedAt();
    await word.click();
    await expect.poll(pointedAt).toBeGreaterThan(first);
    await word.click();
    await expect.poll(pointedAt).toBe(first);
  });

  test('previews a later step without moving the group, then moves the group and undoes the move', async () => {
    const before = await reach();
    const marked = (await markedWords(page)).beyond.length;
    const slider = panel.getByRole('slider');
    const own = panel.locator('.step-count');
    await slider.focus();
    for (let step = 25; step <= 36; step++) {
      await slider.press('ArrowRight');
      await panel.getByText(`This page is shown at step ${step}.`).waitFor();
    }
    await expect.poll(reach).toBeGreaterThan(before);
    await expect.poll(beyond).toBeLessThan(marked);
    expect(await own.textContent()).toContain('Step 24');
    expect(await axeFaults(panel)).toEqual([]);

    await panel.getByRole('button', { name: 'Back to step 24' }).click();
    await expect.poll(reach).toBe(before);

    await slider.fill('36');
    await panel.getByRole('button', { name: 'Move Herons to step 36' }).click();
    await panel.getByText('Herons moved to step 36.').waitFor();
    await expect.poll(() => own.textContent()).toContain('Step 36');
    await expect.poll(reach).toBeGreaterThan(before);
    await panel.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => own.textContent()).toContain('Step 24');
    await expect.poll(reach).toBe(before);
  });

  test('ends the preview of a step when the panel is closed', async () => {
    const marked = (await markedWords(page)).beyond.length;
    await panel.getByRole('slider').fill('60');
    await expect.poll(beyond).toBeLessThan(marked);
    await panel.goto('about:blank');
    await expect.poll(beyond).toBe(marked);
  });

  test('shows the first missing pattern at 360 by 653 pixels, three presses of Tab away', async () => {
    await panel.setViewportSize({ width: 360, height: 653 });
    await panel.locator('.missing > details').evaluateAll((folds) => {
      for (const fold of folds) fold.removeAttribute('open');
    });
    await panel.locator('.group > details').evaluate((line) => line.removeAttribute('open'));
    await panel.locator('main').focus();
    for (let press = 1; press <= 3; press++) await panel.keyboard.press('Tab');
    expect(await focused()).toMatch(/^Mark as taught: /);
    const [row, bar] = await Promise.all(
      ['.gap', '.panel-bar'].map((part) => panel.locator(part).first().boundingBox()),
    );
    expect(row!.y + row!.height).toBeLessThan(bar!.y);
  });

  test('keeps buttons in place while patterns are ticked, and removes ticked rows when the pointer leaves', async () => {
    await panel.setViewportSize({ width: 360, height: 653 });
    const boxes = panel.locator('.gap input');
    // Positions are measured from the panel's head, since in Firefox the test driver scrolls before it clicks.
    const at = () =>
      boxes.evaluateAll((all) => {
        const head = document.querySelector('.masthead')!.getBoundingClientRect().y;
        return all.slice(0, 6).map((box) => Math.round(box.getBoundingClientRect().y - head));
      });
    await panel
      .locator('.gap')
      .first()
      .evaluate((row) => row.scrollIntoView({ block: 'start' }));
    const before = await at();
    const second = await panel.locator('.gap h3').nth(1).textContent();
    for (const row of [0, 1]) {
      await boxes.nth(row).click();
      await expect.poll(() => panel.locator('.gap-taught').count()).toBe(row + 1);
      await panel.locator('.undo-line button').waitFor();
      expect(await at()).toEqual(before);
    }
    expect(await axeFaults(panel)).toEqual([]);
    await boxes.first().click();
    await expect.poll(() => panel.locator('.gap-taught').count()).toBe(1);
    await panel.mouse.move(5, 5);
    await expect.poll(() => panel.locator('.gap h3').allTextContents()).not.toContain(second);
    expect(await panel.locator('.gap-taught').count()).toBe(0);
  });

  onlyIn('chromium', 'two tabs drawn at once')(
    'the replacement words of the word whose card the page opens are in the panel, and what is open follows',
    async () => {
      await panel.getByRole('button', { name: 'winding', exact: true }).first().click();
      await panel.getByRole('region', { name: 'The word winding' }).waitFor();
      await page.bringToFront();
      await browser.command('next-word');
      const line = panel.locator('.word-line');
      await line.waitFor();
      const word = (await line.locator('[aria-expanded]').textContent())!;
      expect(word).not.toBe('winding');
      await panel.getByRole('region', { name: `The word ${word}` }).waitFor();
      await panel.locator('.card-in-view').locator('.swap, .swaps .quiet').first().waitFor();
      await browser.command('next-word');
      await expect.poll(() => line.locator('[aria-expanded]').textContent()).not.toBe(word);
      const next = (await line.locator('[aria-expanded]').textContent())!;
      await panel.getByRole('region', { name: `The word ${next}` }).waitFor();
      expect(await axeFaults(panel)).toEqual([]);
    },
  );

  test('fits 360 pixels at 200 % zoom', async () => {
    await panel.setViewportSize({ width: 180, height: 326 });
    await panel.locator('.gap input').first().click();
    await panel.locator('.undo-line button').waitFor();
    expect(await panel.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(180);
  });

  test('counts a word as a by-sight word, and as judged again after Undo', async () => {
    const before = await reach();
    await panel.getByRole('button', { name: 'winding', exact: true }).first().click();
    const card = panel.getByRole('region', { name: 'The word winding' });
    const judged = card.getByRole('radio', { name: 'as judged' });
    await card.getByRole('radio', { name: 'by-sight word' }).click();
    await panel.getByText('winding counts as: by-sight word.').waitFor();
    await expect.poll(reach).toBeGreaterThan(before);
    await panel.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(reach).toBe(before);
    await expect.poll(() => judged.isChecked()).toBe(true);
  });

  test('offers to shade the page again after the toolbar button removed the shading', async () => {
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.size === 0);
    const shade = panel.getByRole('button', { name: 'Shade this page' });
    await shade.waitFor();
    expect(await axeFaults(panel)).toEqual([]);
    await shade.click();
    await page.waitForFunction(() => CSS.highlights.size > 0);
    await panel.waitForSelector('.reach');
  });
});

describe('the panel for other pages', () => {
  const sentence = async (open: Page): Promise<string> => {
    const view = await browser.openPanel(open);
    const note = view.locator('.note').filter({ hasNotText: 'Reading the page' });
    await note.waitFor();
    expect(await axeFaults(view)).toEqual([]);
    return (await note.textContent()) ?? '';
  };

  test('asks for a press of the button if the button was not pressed yet', async () => {
    const other = await browser.open(browser.serve('other.html', '<title>Other</title><p>A ship.</p>'));
    expect(await sentence(other)).toContain('press the Wordreach button');
  });

  test('says that pages of the browser itself cannot be read', async () => {
    const other = await browser.open(browserPage);
    await browser.press(other);
    expect(await sentence(other)).toContain('a page of the browser itself');
  });
});
