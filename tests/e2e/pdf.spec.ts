import { deflateSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { makeLockedPdf, makePdf, makeScan, pdfParagraphs } from '../desk/make-files.ts';
import { storyParagraphs } from '../desk/pdf-layouts.ts';
import { axeFaults } from './axe-faults.ts';
import { onlyIn, startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';
import { cardFrame } from './framed-card.ts';
import { makeBook, makeDivided, makeEmpty, makeFax, makeForm, makeLarge, makeScanOf } from './pdf-files.ts';

let browser: TestBrowser;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  for (const open of browser.context.pages().slice(1)) await open.close();
  await clearKept(browser);
});

/** Opens a PDF in a tab, presses the button, and returns the tab and its panel. */
async function press(name: string, bytes: Uint8Array): Promise<{ tab: Page; panel: Page }> {
  const tab = await browser.open(browser.serve(name, bytes));
  await browser.press(tab);
  return { tab, panel: await browser.openPanel(tab) };
}

async function follow(link: string, from: Page): Promise<Page> {
  const opening = browser.context.waitForEvent('page');
  await from.getByRole('link', { name: link }).click();
  return opening;
}

/** Opens the extension's own page for the PDF, and returns the page once it is shaded. */
async function openHere(panel: Page): Promise<Page> {
  const view = await follow('Open it here', panel);
  await view.locator('.pdf-sheet').first().waitFor();
  await view.waitForFunction(() => CSS.highlights.size > 0);
  return view;
}

/** Counts all marks of the page, including marks on transparent letters, which have highlights of their own. */
const markCount = (view: Page): Promise<number> =>
  view.evaluate(() => [...CSS.highlights.values()].reduce((sum, { size }) => sum + size, 0));

const wordsOf = async (view: Page): Promise<number> => {
  const said = await view.locator('.reach').textContent();
  return Number(/of (\d[\d,]*) words/.exec(said!)![1]!.replace(',', ''));
};

describe('a PDF in a tab', () => {
  test('is reported in the panel, with its figures, after one press', async () => {
    const book = await makeBook(20);
    const start = performance.now();
    const { panel } = await press('book.pdf', book);
    await panel.getByText('This is a PDF of 20 pages.').waitFor();
    await panel.locator('.reach-figure').waitFor();
    const own = await panel.evaluate(() => performance.now());
    console.info(
      `figures after ${Math.round(performance.now() - start)} ms, ${Math.round(own)} in the panel`,
    );
    expect(await panel.getByRole('heading', { name: 'Missing patterns' }).count()).toBe(1);
    expect(await wordsOf(panel)).toBeGreaterThan(2000);
    expect(await axeFaults(panel)).toEqual([]);
  });

  test('can be opened on the desk, in the report and on the shelf from the panel', async () => {
    const { panel } = await press('night.pdf', await makePdf());
    await panel.locator('.reach-figure').waitFor();
    const report = await follow('Full report', panel);
    await report.getByText('A Wild Night').first().waitFor();
    await report.locator('.climb-plot').waitFor();
    await panel.getByRole('button', { name: 'Save to shelf' }).click();
    await panel.getByText('Saved to the shelf.').waitFor();
    const desk = await follow('Edit this text', panel);
    await desk.locator('.cm-content').waitFor();
    for (const paragraph of pdfParagraphs)
      expect(await desk.locator('.cm-content').textContent()).toContain(paragraph.slice(0, 40));
  });

  test('opens on the extension’s own page, shaded and with the same figures', async () => {
    const { panel } = await press('book.pdf', await makeBook(20));
    await panel.locator('.reach-figure').waitFor();
    const [figure, words] = [await panel.locator('.reach-figure').textContent(), await wordsOf(panel)];
    const start = performance.now();
    const view = await openHere(panel);
    const own = await browser.openPanel(view);
    await own.locator('.reach-figure').waitFor();
    const took = await view.evaluate(() => performance.now());
    console.info(
      `all pages after ${Math.round(performance.now() - start)} ms, ${Math.round(took)} in their page`,
    );
    expect(await view.locator('.pdf-sheet').count()).toBe(20);
    await own.getByText('This is a PDF of 20 pages.').waitFor();
    expect(await own.locator('.reach-figure').textContent()).toBe(figure);
    // A name at the top of a page is recognised by its sentence, and half of that sentence is on the page before. The
    // counts may therefore differ a little.
    expect(Math.abs((await wordsOf(own)) - words)).toBeLessThan(words / 1000);
    expect(await own.getByRole('radio', { name: 'Chosen pages' }).isChecked()).toBe(true);
    expect(await markCount(view)).toBeGreaterThan(50);
    await view.locator('.pdf-sheet canvas').first().waitFor();
  });

  test('has each word marked at its drawn place', async () => {
    const { panel } = await press('book.pdf', await makeBook(2));
    const view = await openHere(panel);
    await view.locator('.pdf-sheet canvas').first().waitFor();
    // Counts the marked words whose letters have ink under them. The paper beside the text must have no ink.
    const inked = await view.evaluate(() => {
      const canvas = document.querySelector<HTMLCanvasElement>('.pdf-sheet canvas')!;
      const sheet = canvas.getBoundingClientRect();
      const scale = canvas.width / sheet.width;
      const dots = canvas.getContext('2d')!;
      const boxes = [...CSS.highlights.values()]
        .flatMap((marks) => [...marks])
        .map((range) => {
          const live = new Range();
          live.setStart(range.startContainer, range.startOffset);
          live.setEnd(range.endContainer, range.endOffset);
          return live.getBoundingClientRect();
        })
        .filter((box) => box.top >= sheet.top && box.bottom <= sheet.bottom);
      return boxes.map((box) => {
        const [x, y] = [(box.left - sheet.left) * scale, (box.top - sheet.top) * scale];
        const { data } = dots.getImageData(x, y, box.width * scale, box.height * scale);
        let dark = 0;
        for (let i = 0; i < data.length; i += 4) if (data[i]! < 128) dark++;
        return dark / (data.length / 4);
      });
    });
    expect(inked.length).toBeGreaterThan(3);
    expect(Math.min(...inked)).toBeGreaterThan(0.04);
  });

  test('has its divided words joined, and its page margins skipped', async () => {
    const { panel } = await press('divided.pdf', await makeDivided());
    const view = await openHere(panel);
    const own = await browser.openPanel(view);
    await own.locator('.reach-figure').waitFor();
    const words = await view.locator('.pdf-text > *').allTextContents();
    expect(words.join(' ').replace(/\s+/g, ' ').trim()).toBe(
      'Bram sat on the wall with a lantern and a big net in his handbag and let the rain hit his umbrella until it was ten.',
    );
    expect(await wordsOf(own)).toBe(26);
  });

  test('is checked on the chosen pages, and only those pages go to the desk', async () => {
    const { panel } = await press('book.pdf', await makeBook(6));
    const view = await openHere(panel);
    const own = await browser.openPanel(view);
    await own.locator('.reach-figure').waitFor();
    const all = await wordsOf(own);
    await view.bringToFront();
    await view.getByLabel('Pages', { exact: true }).fill('2-3');
    await view.getByLabel('Pages', { exact: true }).press('Enter');
    await expect.poll(() => wordsOf(own)).toBeLessThan(all / 2);
    expect(await view.locator('.pdf-sheet:visible').count()).toBe(2);
    const desk = await follow('Edit this text', view);
    await desk.locator('.cm-content').waitFor();
    const begins = (page: number): string => storyParagraphs(page)[0]!.slice(0, 20);
    const text = async (): Promise<string> => (await desk.locator('.cm-content').textContent()) ?? '';
    // The editor draws only the lines in view, so the test goes to the end.
    expect(await text()).toContain(begins(2));
    await desk.locator('.cm-content').press('ControlOrMeta+End');
    await expect.poll(text).toContain(begins(3));
    expect(await text()).not.toContain(begins(4));
    await view.getByLabel('Pages', { exact: true }).fill('9');
    await view.getByLabel('Pages', { exact: true }).press('Enter');
    await view.getByText('Write pages from 1 to 6').waitFor();
  });

  onlyIn('chromium', 'debugging protocol')('has cards, and the next word is found', async () => {
    const { panel } = await press('book.pdf', await makeBook(2));
    const view = await openHere(panel);
    await view.bringToFront();
    await browser.command('next-word');
    const card = await cardFrame(view);
    await card.getByRole('button', { name: 'close' }).waitFor();
  });

  onlyIn('chromium', 'debugging protocol')('closing its page gives its memory back', async () => {
    const { panel } = await press('book.pdf', await makeBook(20));
    await panel.locator('.reach-figure').waitFor();
    // The panel has finished with the file, so no worker is left.
    await expect.poll(() => panel.workers().length).toBe(0);
    const session = await panel.context().newCDPSession(panel);
    // Pages of an extension share one process and its memory.
    const heap = async (): Promise<number> => {
      await session.send('HeapProfiler.collectGarbage');
      return (await session.send('Runtime.getHeapUsage')).usedSize / 1e6;
    };
    const visit = async (): Promise<number> => {
      const view = await openHere(panel);
      const opened = await heap();
      await view.close();
      return opened;
    };
    // The first visit loads parts that stay in memory for the next visit.
    await visit();
    const before = await heap();
    const opened = await visit();
    await expect.poll(heap).toBeLessThan(before + 1);
    console.info(
      `heap ${before.toFixed(1)}, opened ${opened.toFixed(1)}, closed ${(await heap()).toFixed(1)} MB`,
    );
  });

  test('has a page without axe faults in light or dark, narrow or wide', async () => {
    const { panel } = await press('book.pdf', await makeBook(2));
    const view = await openHere(panel);
    for (const width of [320, 1280])
      for (const colorScheme of ['light', 'dark'] as const) {
        await view.setViewportSize({ width, height: 800 });
        await view.emulateMedia({ colorScheme });
        expect(await axeFaults(view)).toEqual([]);
        expect(await view.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      }
    await view.goto(browser.inside('pdf.html'));
    await view.getByText('Choose a PDF file, or drop it here').waitFor();
    expect(await axeFaults(view)).toEqual([]);
  });
});

describe('an unusual PDF', () => {
  const bomb = (): Uint8Array => {
    const packed = deflateSync(deflateSync(Buffer.alloc(80_000_000)));
    const head = `%PDF-1.7\n1 0 obj\n<< /Filter [/FlateDecode /FlateDecode] /Length ${packed.length} >>\nstream\n`;
    return Buffer.concat([Buffer.from(head), packed, Buffer.from('\nendstream\nendobj\n')]);
  };
  test.each([
    ['locked', makeLockedPdf, /has a password/],
    ['damaged', async () => (await makePdf()).slice(0, 300), /^This PDF is damaged/],
    ['500 pages long', () => makeEmpty(500), /has 500 pages, which is too many/],
    ['a bomb', async () => bomb(), /too large once it is unpacked/],
  ])('that is %s is explained in a sentence', async (name, make, says) => {
    const { panel } = await press(`${name}.pdf`, await make());
    await panel.getByRole('status').getByText(says).waitFor();
    await panel.getByRole('link', { name: 'Open a PDF file' }).waitFor();
  });

  test('that is a form gets a note that its fields are not read', async () => {
    const { panel } = await press('form.pdf', await makeForm());
    await panel.getByText('Text in its fields is not read.').waitFor();
    expect(await wordsOf(panel)).toBeLessThan(11);
  });

  test('made of pictures is reported, and its page offers to read the pictures', async () => {
    const { panel } = await press('scan.pdf', await makeScan());
    await panel.getByText('Its pages are pictures, not text.').waitFor();
    const view = await follow('Open it here', panel);
    await view.getByText('2 pages are pictures of text.').waitFor();
    await view.getByRole('button', { name: 'Read these 2 pages' }).waitFor();
    // The extension's own messages are not read as text.
    expect(await markCount(view)).toBe(0);
    expect(await axeFaults(view)).toEqual([]);
  });

  test('made of pictures is read on request, then shaded and sent to the desk', async () => {
    const print = await browser.open(
      browser.serve(
        'print.html',
        `<body style="margin: 60px; width: 700px; font: 26px/1.5 'DejaVu Serif'; background: #fff">${pdfParagraphs.map((text) => `<p>${text}</p>`).join('')}</body>`,
      ),
    );
    const { panel } = await press('scanned.pdf', await makeScanOf(await print.screenshot()));
    const view = await follow('Open it here', panel);
    await view.getByRole('button', { name: 'Read this page' }).click();
    await view.getByText('Reading the picture on page 1.').waitFor();
    await expect.poll(() => markCount(view), { timeout: 40_000 }).toBeGreaterThan(3);
    const read = (await view.locator('.pdf-text > *').allTextContents()).join(' ').replace(/\s+/g, ' ');
    expect(read).toContain('The wind got up in the night');
    const desk = await follow('Edit this text', view);
    await desk.locator('.cm-content').waitFor();
    expect(await desk.locator('.cm-content').textContent()).toContain('Not one man was lost');
  });

  test('with a scan compressed as a fax is drawn', async () => {
    const { panel } = await press('fax.pdf', await makeFax());
    const view = await follow('Open it here', panel);
    await view.locator('.pdf-sheet canvas').waitFor();
    const middle = await view.evaluate(() => {
      const canvas = document.querySelector<HTMLCanvasElement>('.pdf-sheet canvas')!;
      return [...canvas.getContext('2d')!.getImageData(canvas.width / 2, canvas.height / 2, 1, 1).data];
    });
    expect(middle).toEqual([0, 0, 0, 255]);
  });

  test('of 22 MB is read', async () => {
    const { panel } = await press('large.pdf', await makeLarge(22_000_000));
    await panel.locator('.reach-figure').waitFor();
    expect(await wordsOf(panel)).toBe(9);
  });

  test('gets a message of its own when its site does not send the file a second time', async () => {
    const tab = await browser.open(browser.serve('once.pdf', await makePdf()));
    browser.serve('once.pdf', '<p>Log in first.</p>');
    await browser.press(tab);
    const panel = await browser.openPanel(tab);
    await panel.getByText('The site did not let Wordreach load this PDF again.').waitFor();
  });

  test('from this computer opens and is shaded without a press', async () => {
    const view = await browser.open(browser.inside('pdf.html'));
    const buffer = Buffer.from(await makePdf());
    await view
      .locator('input[type=file]')
      .setInputFiles({ name: 'night.pdf', mimeType: 'application/pdf', buffer });
    await view.getByRole('heading', { name: 'A Wild Night', level: 1 }).waitFor();
    await view.waitForFunction(() => CSS.highlights.size > 0);
    const panel = await browser.openPanel(view);
    await panel.locator('.reach-figure').waitFor();
    const desk = await follow('Edit this text', view);
    await desk.locator('.cm-content').waitFor();
  });
});
