import type { Page, Request } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { onlyIn, startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';

/** Text for drawn pages and pictures, which the real extension reads on this computer. */
const STORY = [
  'The Marigold left Tarn Quay before the sun was up.',
  'Ines stood at the rail and counted the lamps on the hill.',
  'Fog came down between the ferry and the lighthouse.',
  'Otto could hear the bell, but he could not see it.',
  'Mr. Falk said that the fish market would open late.',
  'Nobody on the ferry minded waiting for the light.',
  'A gull sat on the mast and looked at them all.',
  'Then the wind turned, and the fog went out to sea.',
  'Wilma waved from the end of the long stone pier.',
  'The bread on her table was still warm when they came.',
  'They ate it with butter, and the gull had the crust.',
  'At noon the bell was still, and the sea was like glass.',
];

/** A page that draws its lines on a canvas. `scrollLines(n)` draws the text from another line. */
const EDITOR = `<!doctype html><title>The ferry in the fog</title><body style="margin:0;overflow:hidden">
  <canvas style="display:block"></canvas><script>
  const lines = ${JSON.stringify(STORY)};
  const canvas = document.querySelector('canvas');
  canvas.width = innerWidth; canvas.height = innerHeight;
  const context = canvas.getContext('2d');
  globalThis.scrollLines = (from) => {
    context.fillStyle = '#fff'; context.fillRect(0, 0, canvas.width, canvas.height);
    context.fillStyle = '#222'; context.font = '18px "DejaVu Serif"';
    lines.slice(from, from + 8).forEach((line, n) => context.fillText(line, 60, 70 + n * 34));
  };
  scrollLines(0);
</script>`;

let browser: TestBrowser;
/** Requests of pages and frames for addresses outside the extension. */
let outward: Request[] = [];
beforeAll(async () => {
  browser = await startBrowser();
  browser.context.on('request', (request) => {
    if (request.serviceWorker() || request.isNavigationRequest()) return;
    if (!/^(chrome-extension|data|blob):/.test(request.url())) outward.push(request);
  });
});
afterEach(async () => {
  // The first requests of a new page are told before its frame, so the frames are looked up only here.
  const strayed = outward.filter((request) => request.frame().url().startsWith(browser.inside('')));
  expect(strayed.map((request) => request.url())).toEqual([]);
  outward = [];
  for (const page of browser.context.pages().slice(1)) await page.close();
});
afterAll(() => browser?.close());

/** Returns a picture of lines of text as a file. */
async function drawPicture(lines: readonly string[], style = 'font-size:20px'): Promise<Buffer> {
  const page = await browser.context.newPage();
  await page.setContent(
    `<body style="margin:0;width:640px;padding:24px;background:#fff;color:#222;font-family:DejaVu Serif;${style}">${lines
      .map((line) => `<p style="margin:0 0 .6em">${line}</p>`)
      .join('')}`,
  );
  const picture = await page.locator('body').screenshot();
  await page.close();
  return picture;
}

const textOf = (page: Page): Promise<string> =>
  page.getByRole('textbox', { name: 'Text', exact: true }).inputValue();
const words = (text: string): string[] => text.split(/\s+/);

/** Waits until a page has read at least a number of words, and returns the words. */
async function readText(page: Page, atLeast: number): Promise<string[]> {
  await expect
    .poll(
      () =>
        textOf(page)
          .then(words)
          .catch(() => []),
      { timeout: 40_000 },
    )
    .toSatisfy((read: string[]) => read.length >= atLeast);
  await page.locator('progress').waitFor({ state: 'detached' });
  return words(await textOf(page));
}

/** Presses a button of the panel by script, so that the page stays in the active tab, as it does beside a real panel. */
const press = (panel: Page, name: string): Promise<void> =>
  panel.getByRole('button', { name }).evaluate((button) => (button as HTMLButtonElement).click());

describe('a page that draws its text', () => {
  onlyIn('chromium', 'debugging protocol')('is read screen by screen as one text', async () => {
    await clearKept(browser);
    const page = await browser.open(browser.serve('editor.html', EDITOR));
    await browser.press(page);
    const panel = await browser.openPanel(page);
    await panel.getByRole('button', { name: 'Read this screen' }).waitFor();
    expect(await axeFaults(panel)).toEqual([]);
    await page.bringToFront();
    const opened = browser.context.waitForEvent('page');
    await press(panel, 'Read this screen');
    const reader = await opened;
    expect((await readText(reader, 60)).join(' ')).toBe(STORY.slice(0, 8).join(' '));
    expect(await reader.locator('.picture-beyond').count()).toBeGreaterThan(0);

    await page.bringToFront();
    await page.evaluate(() => (globalThis as unknown as { scrollLines(n: number): void }).scrollLines(4));
    await press(panel, 'Read this screen');
    await panel.getByText('The screen was added').waitFor();
    expect((await readText(reader, 110)).join(' ')).toBe(STORY.join(' '));

    await press(panel, 'Read this screen');
    await reader.getByText('This screen has nothing new.').waitFor();
    expect((await textOf(reader)).split(/\s+/).join(' ')).toBe(STORY.join(' '));
    await reader.bringToFront();
    expect(await axeFaults(reader)).toEqual([]);

    await reader.getByRole('button', { name: 'Edit this text' }).click();
    await reader.waitForURL(/desk\.html#passage\//);
    await reader
      .getByRole('textbox', { name: /^Text for/ })
      .getByText('counted the lamps')
      .waitFor();
  });
});

describe('a picture on a page', () => {
  const read = async (picture: string): Promise<string> => {
    const html = `<!doctype html><title>Album</title><h1>Pictures of the year</h1><img src="${picture}">`;
    const page = await browser.open(browser.serve('album.html', html));
    // A test cannot choose from Chromium's context menu. The choice would give the right to read the page. The press of
    // the button gives the same right.
    await browser.press(page);
    const source = await page.locator('img').evaluate((img) => (img as HTMLImageElement).currentSrc);
    await page.bringToFront();
    const opened = browser.context.waitForEvent('page');
    await browser.inBackground(async (srcUrl: string) => {
      const [tab] = await chrome.tabs.query({ active: true, lastFocusedWindow: true });
      const heard = chrome.contextMenus.onClicked as unknown as { dispatch(info: object, tab: object): void };
      heard.dispatch({ menuItemId: 'read-picture', srcUrl, frameId: 0, editable: false, pageUrl: '' }, tab!);
    }, source);
    return (await readText(await opened, 45)).join(' ');
  };
  const five = STORY.slice(0, 5);

  onlyIn('chromium', 'debugging protocol')('is read from its file', async () => {
    const picture = await drawPicture(five);
    expect(await read(`data:image/png;base64,${picture.toString('base64')}`)).toBe(five.join(' '));
  });

  onlyIn('chromium', 'debugging protocol')('of another site is read as it is seen', async () => {
    const rows = five.map((line, n) => `<text x="20" y="${40 + n * 34}">${line}</text>`).join('');
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="700" height="220" font-family="DejaVu Serif" font-size="20"><rect width="700" height="220" fill="#fff"/>${rows}</svg>`;
    const address = browser.serve('fog.svg', svg).replace('127.0.0.1', 'localhost');
    expect(await read(address)).toBe(five.join(' '));
  });
});

describe('a picture file', () => {
  test('is opened on the desk, corrected, and made into a passage', async () => {
    await clearKept(browser);
    const desk = await browser.open(browser.inside('desk.html'));
    await desk.getByLabel(/^Choose a text/).setInputFiles({
      name: 'fog.png',
      mimeType: 'image/png',
      buffer: await drawPicture(STORY.slice(0, 6)),
    });
    expect((await readText(desk, 50)).join(' ')).toBe(STORY.slice(0, 6).join(' '));
    expect(await axeFaults(desk)).toEqual([]);
    const field = desk.getByRole('textbox', { name: 'Text', exact: true });
    await field.fill((await field.inputValue()).replace('Marigold', 'Puffin'));
    await desk.getByRole('button', { name: 'Edit this text' }).click();
    await desk.waitForURL(/#passage\//);
    await desk
      .getByRole('textbox', { name: /^Text for/ })
      .getByText('The Puffin left')
      .waitFor();
  });

  test('can be added to the shelf as a text', async () => {
    await clearKept(browser);
    const shelf = await browser.open(browser.inside('shelf.html#add'));
    await shelf
      .getByLabel(/^Choose texts/)
      .setInputFiles({ name: 'fog.png', mimeType: 'image/png', buffer: await drawPicture(STORY) });
    await shelf
      .getByRole('status')
      .filter({ hasText: /^one read\./ })
      .waitFor({ timeout: 40_000 });
    await shelf.goto(browser.inside('shelf.html#texts'));
    await shelf.locator('.shelf-row').getByText('fog').waitFor();
  });

  test('without words is reported in a sentence, and so is a damaged file', async () => {
    const page = await browser.open(browser.inside('picture.html'));
    const choose = page.getByLabel(/^Choose pictures/);
    await choose.setInputFiles({ name: 'a.png', mimeType: 'image/png', buffer: await drawPicture(['']) });
    await page.getByText('No words were found in this picture.').waitFor();
    const broken = Buffer.from('\x89PNG\r\n\x1a\nnothing', 'latin1');
    await choose.setInputFiles({ name: 'b.png', mimeType: 'image/png', buffer: broken });
    await page.getByText('The browser cannot open this picture.').waitFor();
  });

  test('can be stopped while it is read, and then read again', async () => {
    const page = await browser.open(browser.inside('picture.html'));
    const long = Array.from({ length: 5 }, () => STORY).flat();
    await page.getByLabel(/^Choose pictures/).setInputFiles({
      name: 'long.png',
      mimeType: 'image/png',
      buffer: await drawPicture(long, 'font-size:14px'),
    });
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByText('Reading was stopped.').waitFor();
    await expect.poll(() => page.workers().length).toBe(0);
    await page.getByRole('button', { name: 'Read again' }).click();
    await readText(page, 500);
    expect(page.workers()).toHaveLength(0);
  });
});
