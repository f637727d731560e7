import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { startBrowser, type TestBrowser } from './browser.ts';
import { markedWords } from './marked-words.ts';

let browser: TestBrowser;
let page: Page;
let panel: Page;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

const story = readFileSync(new URL('../../public/story/index.html', import.meta.url), 'utf8');

beforeEach(async () => {
  for (const open of browser.context.pages().slice(1)) await open.close();
  page = await browser.open(browser.serve('story.html', story));
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  panel = await browser.openPanel(page);
  await panel.evaluate(() => chrome.storage.local.clear());
  await panel.reload();
  await panel.waitForSelector('.reach');
});

async function faults(view: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page: view as never }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

async function reach(): Promise<number> {
  return Number.parseFloat((await panel.locator('.reach-figure').textContent()) ?? '');
}

describe('the panel for the bundled story', () => {
  test('says the reach, and has no fault for axe in light, dark and narrow', async () => {
    expect(await panel.locator('.page-title').textContent()).toBe('The Night the Lamp Went Out');
    expect(await reach()).toBeGreaterThan(70);
    for (const colorScheme of ['light', 'dark'] as const) {
      await panel.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await panel.setViewportSize({ width: 320, height: 800 });
      expect(await faults(panel)).toEqual([]);
      expect(await panel.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    }
  });

  test('a pattern ticked as taught shades the page anew, and can be taken back', async () => {
    const before = await reach();
    const marked = (await markedWords(page)).beyond;
    expect(marked).toContain('light');
    await panel.getByRole('listitem').filter({ hasText: 'igh as in light' }).getByRole('checkbox').click();
    await page.waitForFunction((count) => (CSS.highlights.get('wr-1')?.size ?? 0) < count, marked.length);
    expect((await markedWords(page)).beyond).not.toContain('light');
    await panel.getByRole('heading', { name: 'Also taught' }).waitFor();
    expect(await reach()).toBeGreaterThan(before);
    expect(await faults(panel)).toEqual([]);

    await panel.getByRole('region', { name: 'Also taught' }).getByRole('checkbox').click();
    await page.waitForFunction((count) => CSS.highlights.get('wr-1')?.size === count, marked.length);
    await panel.waitForFunction(
      (figure) => document.querySelector('.reach-figure')?.textContent === figure,
      `${before.toFixed(1)} %`,
    );
  });

  test('a word leads to its place and is taken apart', async () => {
    await panel.getByRole('button', { name: 'winding', exact: true }).first().click();
    const card = panel.getByRole('region', { name: 'The word winding' });
    await card.waitFor();
    expect(await card.locator('.unit-letters').allTextContents()).toEqual(['w', 'i', 'n', 'd', 'ing']);
    expect(await card.textContent()).toContain('wind + ing');
    await page.waitForFunction(() => CSS.highlights.get('wr-4')?.size === 1);
    expect(await faults(panel)).toEqual([]);
  });

  test('a later step of the sequence reads more', async () => {
    const before = await reach();
    const slider = panel.getByRole('slider');
    await slider.focus();
    for (let i = 0; i < 12; i++) await slider.press('ArrowRight');
    await panel.waitForFunction(
      (text) => document.querySelector('.reach-figure')?.textContent !== text,
      `${before.toFixed(1)} %`,
    );
    expect(await panel.locator('.step-count').textContent()).toContain('Step 36');
    expect(await reach()).toBeGreaterThan(before);
  });

  test('a click on the toolbar button again takes the shading away, and the panel says so', async () => {
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.size === 0);
    await panel.getByRole('button', { name: 'Shade this page' }).waitFor();
    expect(await faults(panel)).toEqual([]);
  });
});
