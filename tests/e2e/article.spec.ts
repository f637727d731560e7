import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startBrowser, type TestBrowser } from './browser.ts';
import { markedWords } from './marked-words.ts';

let browser: TestBrowser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

describe('in a long article for the Herons', () => {
  test('exactly the expected words are marked, and removing the shading restores the page', async () => {
    const expected = JSON.parse(
      readFileSync(new URL('../pages/article.expected.json', import.meta.url), 'utf8'),
    );
    const page = await browser.open(browser.address('article.html'));
    const before = await page.evaluate(() => document.documentElement.outerHTML);

    await browser.press(page);
    await expect.poll(() => markedWords(page), { timeout: 10_000 }).toEqual(expected);
    expect(await page.evaluate(() => document.documentElement.outerHTML)).toBe(before);

    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.size === 0);
    expect(await page.evaluate(() => document.documentElement.outerHTML)).toBe(before);
    expect(await page.evaluate(() => document.adoptedStyleSheets.length)).toBe(0);
    await page.close();
  });
});

describe('on a page that changes while it is shaded', () => {
  test('the shading follows new, edited and removed text', async () => {
    const page = await browser.open(
      browser.serve(
        'changes.html',
        '<title>Changes</title><p id="one">The lighthouse</p><p id="two">A storm</p><div id="host"></div>',
      ),
    );
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.get('wr-1')?.size === 2);

    await page.evaluate(() => {
      document.querySelector('#one')!.firstChild!.nodeValue = 'The captain';
      document.querySelector('#two')!.remove();
      document.body.append(Object.assign(document.createElement('p'), { textContent: 'Seven seals' }));
    });
    await page.waitForFunction(() => CSS.highlights.get('wr-1')?.size === 3);
    expect((await markedWords(page)).beyond).toEqual(['captain', 'Seven', 'seals']);
    await page.close();
  });

  test('open shadow roots are shaded, and hidden text is shaded when it appears', async () => {
    const page = await browser.open(
      browser.serve(
        'shadow.html',
        '<title>Shadow</title><div id="host"></div><p id="later" hidden>The anchor</p>',
      ),
    );
    await page.evaluate(() => {
      document.querySelector('#host')!.attachShadow({ mode: 'open' }).innerHTML = '<p>The harbour</p>';
    });
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.get('wr-1')?.size === 1);
    expect((await markedWords(page)).beyond).toEqual(['harbour']);
    await page.evaluate(() => document.querySelector('#later')!.removeAttribute('hidden'));
    await page.waitForFunction(() => CSS.highlights.get('wr-1')?.size === 2);
    await page.close();
  });
});

describe('the background', () => {
  test('answers again after the browser has stopped the background', async () => {
    const page = await browser.open(browser.serve('again.html', '<title>Again</title><p>The lighthouse</p>'));
    await browser.press(page);
    await page.waitForFunction(() => CSS.highlights.get('wr-1')?.size === 1);

    const inside = await browser.context.newPage();
    await inside.goto(browser.inside('sidepanel.html'));
    const session = await browser.context.newCDPSession(inside);
    await session.send('ServiceWorker.enable');
    await session.send('ServiceWorker.stopAllWorkers');
    await page.evaluate(() =>
      document.body.append(Object.assign(document.createElement('p'), { textContent: 'A captain' })),
    );
    await page.waitForFunction(() => CSS.highlights.get('wr-1')?.size === 2);
    await inside.close();
    await page.close();
  });
});
