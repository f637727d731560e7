import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { onlyIn, startBrowser, type TestBrowser } from './browser.ts';
import { pressEscape } from './framed-card.ts';
import { markedWords, whenMarked } from './marked-words.ts';
import { openFolds } from './open-folds.ts';

let browser: TestBrowser;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  for (const open of browser.context.pages().slice(1)) await open.close();
  await browser.inBackground(() => chrome.storage.local.clear());
});

const line =
  'The ferry came in late that night, and the crew had to tie her up in the dark by the lighthouse. ';
const news = `<title>The Ferry Comes In Late</title><nav><a href="#">Yachts</a></nav>
  <main><h1>The Ferry Comes In Late</h1>${`<p>${line.repeat(3)}</p>`.repeat(4)}</main><footer>Copyright</footer>`;

async function shaded(page: Page): Promise<Page> {
  await browser.press(page);
  await whenMarked(page);
  return page;
}

async function running(panel: Page): Promise<number> {
  const says = (await panel.getByText(/^\d+ of \d+ words/).textContent()) ?? '';
  return Number(/of (\d+) words/.exec(says)?.[1]);
}

describe('the checked text', () => {
  test('can be chosen in the panel, and changes at once', async () => {
    const page = await shaded(await browser.open(browser.serve('news.html', news)));
    const panel = await browser.openPanel(page);
    await panel.getByRole('radio', { name: 'Main story', checked: true }).waitFor();
    const story = await running(panel);
    expect((await markedWords(page)).beyond).not.toContain('Yachts');
    await panel.getByRole('radio', { name: 'Whole page' }).click();
    await expect.poll(() => running(panel)).toBe(story + 2);
    await expect.poll(async () => (await markedWords(page)).beyond).toContain('Copyright');
    expect(await panel.getByRole('radio', { name: 'Selection' }).isDisabled()).toBe(true);

    await page.evaluate(() =>
      getSelection()!.setBaseAndExtent(
        document.querySelector('p')!.firstChild!,
        0,
        document.querySelector('p')!.firstChild!,
        9,
      ),
    );
    await panel.getByRole('radio', { name: 'Selection', disabled: false }).waitFor();
    await panel.getByRole('radio', { name: 'Selection' }).click();
    await expect.poll(() => running(panel)).toBe(2);
    expect(await axeFaults(panel)).toEqual([]);
  });

  test('stays the whole page, with a note, when the main story is chosen on a page without one', async () => {
    const page = await shaded(
      await browser.open(browser.serve('short.html', '<title>Short</title><p>A lighthouse.')),
    );
    const panel = await browser.openPanel(page);
    await panel.getByRole('radio', { name: 'Whole page', checked: true }).waitFor();
    await panel.getByRole('radio', { name: 'Main story' }).click();
    await panel.getByText('No main story was found').waitFor();
    await panel.getByRole('radio', { name: 'Whole page', checked: true }).waitFor();
  });

  test('is the selection after a press on the entry of the context menu', async () => {
    const page = await shaded(await browser.open(browser.serve('news.html', news)));
    await page.evaluate(() => getSelection()!.selectAllChildren(document.querySelector('p')!));
    await browser.checkSelection(page, 'p >> nth=0');
    const panel = await browser.openPanel(page);
    await panel.getByRole('radio', { name: 'Selection', checked: true }).waitFor();
    await expect.poll(() => running(panel)).toBe(63);
  });
});

describe('frames', () => {
  onlyIn('chromium', 'frames of other sites')(
    'of the same site are read with the page, those of others are named with a way to open them',
    async () => {
      browser.serve('inner.html', '<title>Inner</title><p>Seven lanterns');
      const foreign = browser.serve('other.html', '<p>Whales').replace('127.0.0.1', 'localhost');
      const page = await browser.open(
        browser.serve(
          'outer.html',
          `<title>Outer</title><p>The lighthouse</p><iframe src="inner.html"></iframe>
         <iframe src="${foreign}" title="Whale log" width="400" height="200"></iframe>
         <iframe src="${foreign}" width="10" height="10"></iframe>`,
        ),
      );
      await shaded(page);
      const frame = page.frame({ url: /inner/ })!;
      await frame.waitForFunction(() => CSS.highlights.size > 0);
      const panel = await browser.openPanel(page);
      await expect.poll(() => running(panel)).toBe(4);
      await panel.getByRole('link', { name: 'Whale log' }).waitFor();
      expect(await panel.getByRole('link', { name: /localhost|127/ }).count()).toBe(0);
      expect(await panel.getByRole('link', { name: 'Whale log' }).getAttribute('href')).toBe(foreign);

      await openFolds(panel);
      await panel.getByRole('button', { name: 'lanterns', exact: true }).first().click();
      await frame.waitForFunction(() => CSS.highlights.get('wr-4')?.size === 1);

      await browser.press(page);
      await page.waitForFunction(() => CSS.highlights.size === 0);
      await frame.waitForFunction(() => CSS.highlights.size === 0);
    },
  );
});

describe('the toolbar button and shortcuts', () => {
  test('the button shows the page’s reach, rounded down, and nothing once the shading is removed', async () => {
    const page = await shaded(
      await browser.open(
        browser.serve('badge.html', '<title>Badge</title><p>A ship in the bay and a lighthouse.'),
      ),
    );
    await expect.poll(() => browser.badge(page)).toMatch(/^\d+%$/);
    const panel = await browser.openPanel(page);
    const figure = Number.parseFloat((await panel.locator('.reach-figure').textContent()) ?? '');
    await page.bringToFront();
    expect(await browser.badge(page)).toBe(`${Math.floor(figure)}%`);
    await page.evaluate(() => document.body.append(' Lanterns and yachts and buoys.'));
    await expect.poll(() => browser.badge(page)).not.toBe(`${Math.floor(figure)}%`);
    await browser.press(page);
    await expect.poll(() => browser.badge(page)).toBe('');
  });

  test('shortcuts exist for every action, and go from word to word', async () => {
    const page = await shaded(await browser.open(browser.serve('news.html', news)));
    const names = await browser.inBackground(async () =>
      (await chrome.commands.getAll()).map(({ name }) => name),
    );
    expect(names).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^_execute_/),
        'next-word',
        'previous-word',
        'open-desk',
      ]),
    );
    const here = () =>
      page.evaluate(() =>
        [...(CSS.highlights.get('wr-4') ?? [])].map((range) =>
          (range.startContainer as Text).data.slice(range.startOffset, range.endOffset),
        ),
      );
    const { beyond } = await markedWords(page);
    await browser.command('next-word');
    await expect.poll(here).toEqual([beyond[0]]);
    await browser.command('next-word');
    await expect.poll(here).toEqual([beyond[1]]);
    await browser.command('previous-word');
    await expect.poll(here).toEqual([beyond[0]]);
  });
});

describe('the word card', () => {
  const hosts = (page: Page) =>
    page.evaluate(() => document.querySelectorAll('html > :not(head, body)').length);

  test('opens at the next hard word with the keyboard focus, and leaves the page unchanged once closed', async () => {
    const page = await shaded(await browser.open(browser.serve('news.html', news)));
    const before = await page.evaluate(() => document.documentElement.outerHTML);
    await browser.command('next-word');
    await expect.poll(() => hosts(page)).toBe(1);
    pressEscape(page);
    await expect.poll(() => hosts(page)).toBe(0);
    expect(await page.evaluate(() => document.documentElement.outerHTML)).toBe(before);
  });

  test('opens at a click with Alt, and the page does not get the click', async () => {
    const page = await shaded(await browser.open(browser.serve('news.html', news)));
    await page.evaluate(() => addEventListener('click', () => document.body.append('pressed')));
    const word = page.locator('p').first();
    await word.click({ modifiers: ['Alt'], position: { x: 40, y: 8 } });
    await expect.poll(() => hosts(page)).toBe(1);
    expect(await page.getByText('pressed').count()).toBe(0);
    await page.mouse.click(5, 5);
    await expect.poll(() => hosts(page)).toBe(0);
  });

  onlyIn('chromium', 'debugging protocol')(
    'opens on a page that was left and is come back to, where nothing can be put any more',
    async () => {
      const page = await shaded(await browser.open(browser.serve('news.html', news)));
      const session = await browser.context.newCDPSession(page);
      const brought = new Promise<void>((resolve) => {
        session.on('Debugger.scriptParsed', ({ url }) => url.endsWith('/page-card.js') && resolve());
      });
      await session.send('Debugger.enable');
      await page.mouse.move(60, 60);
      await brought;
      await session.detach();
      const elsewhere = browser.serve('other.html', '<p>Tide').replace('127.0.0.1', 'localhost');
      await page.evaluate(() => {
        addEventListener('pageshow', ({ persisted }) =>
          document.documentElement.setAttribute('id', `${persisted}`),
        );
      });
      await page.goto(elsewhere);
      await page.goBack({ waitUntil: 'commit' });
      await page.locator('#true').waitFor();
      await page
        .locator('p')
        .first()
        .click({ modifiers: ['Alt'], position: { x: 40, y: 8 } });
      await expect.poll(() => hosts(page)).toBe(1);
    },
  );

  test('the teacher’s choice for a word applies at once, and is kept', async () => {
    const page = await shaded(await browser.open(browser.serve('news.html', news)));
    expect((await markedWords(page)).beyond).toContain('lighthouse');
    const panel = await browser.openPanel(page);
    const act = (given: object) =>
      panel.evaluate((given) => chrome.runtime.sendMessage({ to: 'background', ask: 'act', given }), given);
    await act({ do: 'by-sight', word: 'lighthouse' });
    await expect.poll(async () => (await markedWords(page)).beyond).not.toContain('lighthouse');
    await act({ do: 'skip', word: 'ferry' });
    await expect.poll(async () => (await markedWords(page)).beyond).not.toContain('ferry');
    await act({ do: 'teach', pattern: 'igh' });
    await expect.poll(async () => (await markedWords(page)).beyond).not.toContain('night');
    await panel.getByText('Taught early').waitFor();
  });
});

describe('the look of marks', () => {
  test('is chosen in the panel, and applies to all pages from then on', async () => {
    const page = await shaded(await browser.open(browser.serve('news.html', news)));
    const rules = () =>
      page.evaluate(() => document.adoptedStyleSheets.map((sheet) => sheet.cssRules[0]?.cssText).join());
    expect(await rules()).toContain('background');
    const panel = await browser.openPanel(page);
    await panel.getByLabel('Underline only').check();
    await expect.poll(rules).not.toContain('background');
    await panel.close();
    const other = await shaded(
      await browser.open(browser.serve('short.html', '<title>Short</title><p>A lighthouse.')),
    );
    await expect
      .poll(() => other.evaluate(() => document.adoptedStyleSheets[0]?.cssRules[0]?.cssText))
      .not.toContain('background');
  });
});

describe('privacy', () => {
  test('the page, the panel and the background request nothing from other computers', async () => {
    const asked: string[] = [];
    const isOurs = (url: string) =>
      /^((blob:)?(chrome|moz)-extension:|http:\/\/127\.0\.0\.1|data:)/.test(url);
    browser.context.on('request', (request) => {
      if (!isOurs(request.url())) asked.push(request.url());
    });
    const page = await shaded(await browser.open(browser.serve('news.html', news)));
    const fromPage: string[] = [];
    page.on('request', (request) => fromPage.push(request.url()));
    const panel = await browser.openPanel(page);
    await panel.waitForSelector('.missing');
    await openFolds(panel);
    await panel.getByRole('button', { name: 'lighthouse', exact: true }).first().click();
    await panel.getByRole('region', { name: 'The word lighthouse' }).waitFor();
    expect(asked).toEqual([]);
    expect(fromPage, 'shading makes the page ask for nothing').toEqual([]);
  });

  test('the page sees neutral names and ranges, and nothing about the group', async () => {
    const page = await shaded(await browser.open(browser.serve('news.html', news)));
    const seen = await page.evaluate(() => ({
      names: [...CSS.highlights.keys()],
      globals: Object.keys(globalThis).filter((key) => /wordreach|group|taught/i.test(key)),
      sheets: document.adoptedStyleSheets
        .flatMap((sheet) => [...sheet.cssRules].map(({ cssText }) => cssText))
        .join(),
      html: document.documentElement.outerHTML,
    }));
    expect(seen.names.every((name) => /^wr-\d$/.test(name))).toBe(true);
    expect(seen.globals).toEqual([]);
    expect(seen.sheets + seen.html).not.toMatch(/wordreach|taught|herons|beyond/i);
  });

  test('the extension ignores messages of the page', async () => {
    const page = await shaded(await browser.open(browser.serve('news.html', news)));
    const before = (await markedWords(page)).beyond.length;
    const sent = await page.evaluate((id) => {
      for (const message of [
        { to: 'page', ask: 'stop' },
        { to: 'background', ask: 'act', given: { do: 'skip', word: 'ferry' } },
      ])
        window.postMessage(message, '*');
      const runtime = (globalThis as { chrome?: { runtime?: { sendMessage?: unknown } } }).chrome?.runtime;
      return { runtime: runtime?.sendMessage !== undefined, id };
    }, browser.id);
    expect(sent.runtime, 'no way for pages to reach the extension').toBe(false);
    expect((await markedWords(page)).beyond.length).toBe(before);
    expect(await browser.inBackground(() => chrome.storage.local.get('groups'))).toEqual({});
  });
});
