import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { spanish } from '../../src/wording/es.ts';
import { startOwnBrowser, type TestBrowser } from './browser.ts';
import { openOwnPage, ownPages } from './own-pages.ts';

let browser: TestBrowser;
const STORY = '<p>Bram ran to the lighthouse. The net was big and wet, and it had ten fish in it.</p>'.repeat(
  3,
);

async function panelOn(html: string): Promise<Page> {
  const page = await browser.open(browser.serve('story.html', html));
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  const panel = await browser.openPanel(page);
  await panel.locator('.reach').waitFor();
  return panel;
}

describe('in a Spanish browser', () => {
  beforeAll(async () => {
    browser = await startOwnBrowser('es');
  });
  afterAll(() => browser?.close());

  test.each(Object.keys(ownPages) as (keyof typeof ownPages)[])('%s is in Spanish', async (address) => {
    const page = await openOwnPage(browser, address);
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('es');
    // The texts of the interface, all of which must be Spanish. Parts in English are marked as English and left out.
    const said = await page.evaluate(() => {
      const texts: string[] = [];
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      while (walker.nextNode()) {
        const { parentElement, data } = walker.currentNode as Text;
        if (/\p{L}{3}/u.test(data) && !parentElement!.closest('[lang="en"], script, style, option, h1.name'))
          texts.push(data.trim());
      }
      return texts;
    });
    const english = /\b(?:the|this|with|your|are|from|words|text|group|groups|page|what|and)\b/i;
    expect(said.length).toBeGreaterThan(1);
    // A pattern's key word is English, for example "th como en this".
    const left = said
      .map((text) => text.replace(/\S+ como en \S+|\bair, are,/g, ''))
      .filter((text) => english.test(text));
    expect(left).toEqual([]);
  });

  test('the panel and its counts are in Spanish', async () => {
    const panel = await panelOn(STORY);
    await panel.getByText('Patrones que faltan').waitFor();
    await panel.getByText(/\d+ de \d+ palabras/).waitFor();
    expect(await panel.evaluate(() => document.documentElement.lang)).toBe('es');
  });

  test('the first missing pattern is in view at 360 by 653 pixels, three presses of Tab away', async () => {
    const panel = await panelOn(
      readFileSync(new URL('../../public/story/index.html', import.meta.url), 'utf8'),
    );
    await panel.setViewportSize({ width: 360, height: 653 });
    await panel.locator('main').focus();
    for (let press = 1; press <= 3; press++) await panel.keyboard.press('Tab');
    const focused = await panel.evaluate(() => document.activeElement?.parentElement?.textContent);
    expect(focused).toMatch(/^\s*Marcar como enseñado: /);
    const [row, bar] = await Promise.all(
      ['.gap', '.panel-bar'].map((part) => panel.locator(part).first().boundingBox()),
    );
    expect(row!.y + row!.height).toBeLessThan(bar!.y);
    expect(await panel.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  });

  test('the description and button name that the browser shows for the extension are in Spanish', async () => {
    const page = await openOwnPage(browser, 'groups.html');
    const shown = await page.evaluate(() => [
      chrome.runtime.getManifest().description,
      chrome.runtime.getManifest().action?.default_title,
    ]);
    expect(shown).toEqual([spanish.manifest.description, spanish.manifest.button]);
  });
});

describe('in a browser of another language', () => {
  beforeAll(async () => {
    browser = await startOwnBrowser('de');
  });
  afterAll(() => browser?.close());

  test('the interface is in English', async () => {
    const page = await openOwnPage(browser, 'groups.html');
    expect(await page.evaluate(() => [document.documentElement.lang, document.title])).toEqual([
      'en',
      'Groups · Wordreach',
    ]);
  });

  test.each([
    ['<html lang="fr-CA">', 'This page says it is in Canadian French.'],
    ['<html lang="en">', null],
    ['<html lang="en"><body lang="de">', 'This page says it is in German.'],
    ['<html lang="x-nonsense-of-a-code-1">', 'This page says it is in'],
    ['<html>', null],
  ])('the panel names the foreign language, if any, of a page that begins with %s', async (begins, says) => {
    const panel = await panelOn(`<!doctype html>${begins}${STORY}`);
    const note = panel.getByText('This page says it is in');
    expect(await note.count()).toBe(says === null ? 0 : 1);
    if (says) expect(await note.textContent()).toContain(says);
  });
});
