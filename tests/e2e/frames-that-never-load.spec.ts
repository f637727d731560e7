import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startBrowser, type TestBrowser } from './browser.ts';

let browser: TestBrowser;
let hanging: Server;
let nowhere: string;

beforeAll(async () => {
  browser = await startBrowser();
  hanging = createServer(() => undefined);
  await new Promise<void>((resolve) => hanging.listen(0, '127.0.0.1', resolve));
  nowhere = `http://127.0.0.1:${(hanging.address() as AddressInfo).port}/`;
});
afterAll(async () => {
  await browser?.close();
  hanging?.closeAllConnections();
  hanging?.close();
});

const FAR_DOWN = '<div style="height: 6000px"></div>';

test.each([
  ['a lazy frame below the view', () => `${FAR_DOWN}<iframe loading="lazy" src="inner.html"></iframe>`],
  ['a frame whose server hangs', () => `<iframe src="${nowhere}"></iframe>`],
  ['a frame of a script that does nothing', () => '<iframe src="javascript:false"></iframe>'],
  [
    'twelve of them',
    () => `<iframe src="${nowhere}"></iframe><iframe src="javascript:false"></iframe>`.repeat(6),
  ],
])('a page with %s is shaded, and the panel shows its figures', async (_kind, frames) => {
  browser.serve('inner.html', '<title>Inner</title><p>Seven lanterns');
  const address = browser.serve('outer.html', `<title>Outer</title><p>The lighthouse ${frames()}`);
  const page = await browser.context.newPage();
  await page.goto(address, { waitUntil: 'domcontentloaded' });
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  const panel = await browser.openPanel(page);
  await panel.locator('.reach-figure').waitFor();
  await panel.getByText('of 2 words').waitFor();
  await panel.close();
  await page.close();
});

test('a page with thirty frames is marked before its frames, and all frames are read', async () => {
  browser.serve('inner.html', '<title>Inner</title><p>Seven lanterns');
  const address = browser.serve(
    'thirty.html',
    // Searching for the main text in this story takes longer than looking at a frame.
    `<title>Thirty</title><p>${'Seven gulls sat on the wall. '.repeat(15)}</p>${'<iframe src="inner.html"></iframe>'.repeat(30)}`,
  );
  const page = await browser.open(address);
  const marked = page.evaluate(async () => {
    const marks = (frame: Window): number =>
      (frame as Window & { CSS: typeof CSS }).CSS.highlights.size > 0 ? 1 : 0;
    let inFrames = 0;
    while (marks(window) === 0) {
      for (let at = 0; at < frames.length; at++) inFrames += marks(frames[at]!);
      await new Promise(requestAnimationFrame);
    }
    return { inFrames, frames: frames.length };
  });
  await browser.press(page);
  expect(await marked).toEqual({ inFrames: 0, frames: 30 });
  const panel = await browser.openPanel(page);
  await panel.getByText('of 150 words').waitFor();
  await panel.close();
  await page.close();
});

test('a lazy frame is read once the reader scrolls to it', async () => {
  browser.serve('inner.html', '<title>Inner</title><p>Seven lanterns');
  const address = browser.serve(
    'lazy.html',
    `<title>Lazy</title><p>The lighthouse ${FAR_DOWN}<iframe loading="lazy" src="inner.html"></iframe>`,
  );
  const page = await browser.open(address);
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  const panel = await browser.openPanel(page);
  await panel.getByText('of 2 words').waitFor();
  await page.bringToFront();
  await page.evaluate(() => scrollTo(0, 7000));
  await panel.getByText('of 4 words').waitFor();
});

test('a page from a slow server is shaded while it is still loading, and the rest when it arrives', async () => {
  let finish = (): void => undefined;
  const slow = createServer((_request, response) => {
    response.writeHead(200, { 'content-type': 'text/html' });
    response.write(`<title>Slow</title><p>The lighthouse</p>${' '.repeat(2000)}`);
    finish = () => response.end('<p>Seven lanterns</p>');
  });
  await new Promise<void>((resolve) => slow.listen(0, '127.0.0.1', resolve));
  const page = await browser.context.newPage();
  await page.goto(`http://127.0.0.1:${(slow.address() as AddressInfo).port}/`, { waitUntil: 'commit' });
  await page.locator('p').waitFor();
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  const panel = await browser.openPanel(page);
  await panel.getByText('of 2 words').waitFor();
  finish();
  await panel.getByText('of 4 words').waitFor();
  slow.close();
});
