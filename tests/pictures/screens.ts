import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { makeScan } from '../desk/make-files.ts';
import type { TestBrowser } from '../e2e/browser.ts';
import { makeBook } from '../e2e/pdf-files.ts';
import { texts } from './tarn-quay-texts.ts';

/** A view of the product as a teacher sees it. */
export interface Screen {
  readonly name: string;
  /** The widths at which the view is inspected, in CSS pixels. */
  readonly widths: readonly number[];
  /** Opens the view and waits until it is complete. */
  readonly open: (browser: TestBrowser) => Promise<Page>;
  /** Reopens a part over the page that has to be opened again after a change of size. */
  readonly settle?: (page: Page) => Promise<void>;
}

/** A scope and sequence as a spreadsheet copies it. */
const SPREADSHEET = [
  'Unit\tWeek\tFocus\tSpellings\tExamples\tSight words',
  '1\t1\tShort a\tm, s, t, p\tmat, tap\tthe, a',
  '1\t2\tShort i\tn, f, b\tfin, bit\tis, to',
  '1\t3\tInitial blends\tbl, cl, fl\tclap\tof, was',
  '1\t4\tReview week\t\t\t',
  '2\t5\tLong a teams\tai, ay\train, bay\tthey',
  '2\t6\tVariant vowels\t\tsauce\tsaid',
].join('\n');

/** Opens a PDF of six pages in the PDF page and waits until its words are shaded. */
async function shadedPdf(browser: TestBrowser): Promise<Page> {
  const tab = await browser.open(browser.serve('harbour.pdf', await makeBook(6)));
  await browser.press(tab);
  const panel = await browser.openPanel(tab);
  const opening = browser.context.waitForEvent('page');
  await panel.locator('a[href*="pdf.html"]').click();
  const view = await opening;
  await view.locator('.pdf-sheet canvas').first().waitFor();
  await view.waitForFunction(() => CSS.highlights.size > 0);
  return view;
}

const WIDE = [400, 1280];
const PANEL = [320, 480];
const story = readFileSync(new URL('../../public/story/index.html', import.meta.url), 'utf8');

async function shadedStory(browser: TestBrowser): Promise<Page> {
  const page = await browser.open(browser.serve('story.html', story));
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  return page;
}

async function panel(browser: TestBrowser): Promise<Page> {
  const view = await browser.openPanel(await shadedStory(browser));
  await view.locator('.reach').waitFor();
  return view;
}

async function practice(browser: TestBrowser): Promise<Page> {
  const page = await own(browser, 'practice.html', (view) => view.locator('article'));
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  return page;
}

/** Opens a page of the extension and waits for one of its elements. */
async function own(browser: TestBrowser, address: string, ready: (page: Page) => Locator): Promise<Page> {
  const page = await browser.open(`chrome-extension://${browser.id}/${address}`);
  await ready(page).first().waitFor();
  return page;
}

async function passage(browser: TestBrowser, n: number): Promise<Page> {
  const page = await own(browser, 'desk.html#new', (desk) => desk.locator('textarea'));
  const { title, text } = texts[n]!;
  await page.locator('#pasted').fill(`# ${title}\n\n${text}`);
  await page.locator('.part .action').first().click();
  await page.locator('.desk-beyond').first().waitFor();
  return page;
}

/** Opens a book page that was scanned so small that some of its words have to be checked. */
async function picture(browser: TestBrowser): Promise<Page> {
  const sheet = await browser.context.newPage();
  const { title, text } = texts[2]!;
  await sheet.setContent(
    `<body style="margin:0;width:520px;padding:20px;background:#f4ecd8;color:#4a3b28;font:13px/1.6 DejaVu Serif"><h1>${title}</h1>${text
      .split('\n')
      .map((line) => `<p>${line}</p>`)
      .join('')}`,
  );
  const buffer = await sheet.locator('body').screenshot({ type: 'jpeg', quality: 25 });
  await sheet.close();
  const page = await own(browser, 'picture.html', (view) => view.locator('input[type=file]'));
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: `${title}.jpg`, mimeType: 'image/jpeg', buffer });
  await page.locator('.reach').waitFor({ timeout: 60_000 });
  return page;
}

async function shelf(browser: TestBrowser): Promise<Page> {
  const page = await own(browser, 'shelf.html#add', (view) => view.locator('input[type=file]'));
  await page.locator('input[type=file]').setInputFiles(
    texts.map(({ title, text }) => ({
      name: `${title}.txt`,
      mimeType: 'text/plain',
      buffer: Buffer.from(`# ${title}\n\n${text}`),
    })),
  );
  await page
    .getByText(/^5 texts? of 5|All \S+ read|5 of 5/)
    .first()
    .waitFor()
    .catch(() => undefined);
  await page.goto(`chrome-extension://${browser.id}/shelf.html#texts`);
  await page.locator('.shelf-row').nth(4).waitFor();
  return page;
}

export const screens: readonly Screen[] = [
  {
    name: 'welcome',
    widths: WIDE,
    open: (b) => own(b, 'welcome.html', (page) => page.locator('.welcome-step')),
  },
  { name: 'practice', widths: WIDE, open: practice },
  { name: 'story', widths: [1280], open: shadedStory },
  { name: 'panel', widths: PANEL, open: panel },
  { name: 'pdf', widths: WIDE, open: shadedPdf },
  {
    name: 'pdf-panel',
    widths: PANEL,
    open: async (browser) => {
      const tab = await browser.open(browser.serve('harbour.pdf', await makeBook(6)));
      await browser.press(tab);
      const view = await browser.openPanel(tab);
      await view.locator('.reach-figure').waitFor();
      return view;
    },
  },
  {
    name: 'pdf-scan',
    widths: WIDE,
    open: async (browser) => {
      const tab = await browser.open(browser.serve('scan.pdf', await makeScan()));
      await browser.press(tab);
      const panel = await browser.openPanel(tab);
      const opening = browser.context.waitForEvent('page');
      await panel.locator('a[href*="pdf.html"]').click();
      const view = await opening;
      await view.locator('.pdf-sheet canvas').first().waitFor();
      return view;
    },
  },
  {
    name: 'pdf-file',
    widths: WIDE,
    open: (b) => own(b, 'pdf.html', (page) => page.locator('.drop')),
  },
  {
    name: 'panel-word',
    widths: PANEL,
    open: async (browser) => {
      const view = await panel(browser);
      await view.locator('.gap .word').first().click();
      await view.locator('.units').waitFor();
      return view;
    },
  },
  {
    name: 'groups',
    widths: WIDE,
    open: (b) => own(b, 'groups.html', (page) => page.locator('.field-large')),
  },
  {
    name: 'sequence',
    widths: WIDE,
    open: (b) => own(b, 'groups.html#sequence/steady-steps', (page) => page.locator('main li')),
  },
  {
    name: 'paste',
    widths: WIDE,
    open: async (b) => {
      const page = await own(b, 'groups.html#paste', (opened) => opened.locator('textarea'));
      await page.locator('textarea').fill(SPREADSHEET);
      await page.locator('.column-kinds').waitFor();
      await page.locator('.never-taught').waitFor();
      return page;
    },
  },
  { name: 'share', widths: WIDE, open: (b) => own(b, 'groups.html#share', (page) => page.locator('button')) },
  { name: 'desk-empty', widths: WIDE, open: (b) => own(b, 'desk.html', (page) => page.locator('textarea')) },
  { name: 'desk', widths: WIDE, open: (b) => passage(b, 2) },
  {
    name: 'lesson',
    widths: WIDE,
    open: (b) => own(b, 'lesson.html#plovers', (page) => page.locator('.lesson-part')),
  },
  { name: 'shelf', widths: WIDE, open: shelf },
  {
    name: 'shelf-groups',
    widths: WIDE,
    open: (b) => own(b, 'shelf.html#groups', (page) => page.locator('table')),
  },
  {
    name: 'shelf-add',
    widths: WIDE,
    open: (b) => own(b, 'shelf.html#add', (page) => page.locator('input[type=file]')),
  },
  { name: 'picture', widths: WIDE, open: picture },
  {
    name: 'report',
    widths: WIDE,
    open: async (browser) => {
      const view = await panel(browser);
      const opened = browser.context.waitForEvent('page');
      await view.locator('a[href*="report.html"]').click();
      const report = await opened;
      await report.locator('.climb-plot').waitFor();
      return report;
    },
  },
  { name: 'help', widths: WIDE, open: (b) => own(b, 'help.html', (page) => page.locator('.help-keys')) },
  { name: 'privacy', widths: WIDE, open: (b) => own(b, 'privacy.html', (page) => page.locator('h1')) },
];
