import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';

let browser: TestBrowser;
let page: Page;

// The shelf is not cleared, so it has the texts that installing puts there.
beforeAll(async () => {
  browser = await startBrowser();
  page = await browser.open(browser.inside('shelf.html'));
  await page.locator('.shelf-row').nth(47).waitFor();
});
afterAll(() => browser?.close());

/** Returns the typefaces in which the browser drew the text of an element. */
async function fontsOf(selector: string): Promise<string[]> {
  const talk = await page.context().newCDPSession(page);
  await talk.send('DOM.enable');
  await talk.send('CSS.enable');
  const { root } = await talk.send('DOM.getDocument');
  const { nodeId } = await talk.send('DOM.querySelector', { nodeId: root.nodeId, selector });
  const { fonts } = await talk.send('CSS.getPlatformFontsForNode', { nodeId });
  await talk.detach();
  return fonts.map(({ familyName, isCustomFont }) => `${familyName}${isCustomFont ? ' of the package' : ''}`);
}

test('the shelf after installing has no axe faults in light or dark, and fits 320 px', async () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await axeFaults(page)).toEqual([]);
  }
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  await page.setViewportSize({ width: 1280, height: 900 });
});

test('a text of the shelf becomes a lesson, printed in the typeface of the package', async () => {
  await page.getByRole('link', { name: 'The Snake at the Gate' }).click();
  await page.getByRole('button', { name: 'Make a lesson' }).click();
  await page.locator('.lesson-part').nth(3).waitFor();
  await page.getByRole('button', { name: 'Print…' }).click();
  await page.locator('.lesson-paper h2').first().waitFor();
  await expect.poll(() => fontsOf('.lesson-paper h2')).toEqual(['Andika of the package']);
  await page.keyboard.press('Escape');
});

test('one click removes the texts that came with the extension, and Undo restores them', async () => {
  await page.goto(browser.inside('shelf.html#texts'));
  await page.getByRole('button', { name: 'Remove these 48 texts' }).click();
  await page.getByText('The shelf is empty.').waitFor();
  expect(await axeFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.shelf-row').nth(47).waitFor();
});
