import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { clearKept } from './clear-kept.ts';
import { openFolds } from './open-folds.ts';
import { readPdf } from './read-pdf.ts';

let browser: TestBrowser;

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());
beforeEach(() => clearKept(browser));

const story = readFileSync(new URL('../../public/story/index.html', import.meta.url), 'utf8');

async function openPanel(): Promise<{ page: Page; panel: Page }> {
  const page = await browser.open(browser.serve('story.html', story));
  await browser.press(page);
  await page.waitForFunction(() => CSS.highlights.size > 0);
  const panel = await browser.openPanel(page);
  await panel.waitForSelector('.reach');
  return { page, panel };
}

async function openReport(from: Page): Promise<Page> {
  const opened = browser.context.waitForEvent('page');
  await from.getByRole('link', { name: 'Full report' }).click();
  const report = await opened;
  await report.waitForSelector('.climb-plot');
  return report;
}

const reachOf = async (view: Page) => (await view.locator('.reach-figure').textContent())!;
/** Returns the table cells of a climb: the step, the patterns it teaches, and a figure for each group. */
const rowsOf = (report: Page) =>
  report
    .locator('.climb-table tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) => [...row.querySelectorAll('td')].map((cell) => cell.firstChild!.textContent)),
    );

/**
 * Expects no axe faults within a part of the page, in light colours, in dark colours and in a narrow window. Nothing
 * may be wider than the window.
 */
async function expectSound(view: Page, part = 'body'): Promise<void> {
  const fits = (width: number) =>
    expect(view.evaluate(() => document.documentElement.scrollWidth)).resolves.toBeLessThanOrEqual(width);
  await view.setViewportSize({ width: 320, height: 800 });
  for (const colorScheme of ['light', 'dark'] as const) {
    await view.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    expect(await axeFaults(view, part)).toEqual([]);
    await fits(320);
  }
  await view.setViewportSize({ width: 1280, height: 800 });
  await fits(1280);
}

describe('the report on a page', () => {
  test('has the panel’s reach, the climb, missing patterns and words, and no axe faults', async () => {
    const { panel } = await openPanel();
    const report = await openReport(panel);
    expect(await report.getByRole('article').getByRole('heading', { level: 1 }).textContent()).toBe(
      'The Night the Lamp Went Out',
    );
    expect(await reachOf(report)).toBe(await reachOf(panel));
    const says = (await report.locator('.climb-says li').allTextContents())[0]!;
    expect(says).toContain(`At step 24, ${await reachOf(panel)} is readable.`);
    expect(says).toMatch(/95% will be readable from step \d+ \(/);
    const gaps = await report.locator('.report-gaps h3').allTextContents();
    await openFolds(panel);
    expect(await panel.locator('.gap h3').allTextContents()).toEqual(
      expect.arrayContaining(gaps.slice(0, 2)),
    );
    expect(await report.getByRole('region', { name: 'Not yet decodable' }).textContent()).toContain('light');
    await expectSound(report);
    for (const fold of ['All missing patterns', 'All words', 'Group settings'])
      await report.getByRole('heading', { name: fold }).click();
    expect(await report.locator('.report-standing').first().textContent()).toContain('light');
    await expectSound(report);

    const plot = report.locator('.climb-plot');
    const { width } = (await plot.boundingBox())!;
    await plot.hover({ position: { x: (width * 37) / 75, y: 100 } });
    const readout = report.locator('.climb-readout');
    await readout.getByText('Step 37').waitFor();
    const read = (await readout.textContent())!;
    expect(read).toMatch(
      /^Step 37, Two closed syllables: napkin, rabbit: Herons \d+\.\d%, \d+ more words readable$/,
    );
    expect(read).toContain((await rowsOf(report))[37]![2]!);

    // The line of another group differs by its dashes, not only by its colour.
    await report.getByRole('checkbox', { name: 'Plovers' }).check();
    const dashes = await report
      .locator('.climb-lines .climb-line')
      .evaluateAll((lines) => lines.map((line) => getComputedStyle(line).strokeDasharray));
    expect(new Set(dashes).size).toBe(2);
    await report.getByText('All steps, as table').click();
    await expectSound(report, '.climb');
  });

  test('can be reloaded after the page is closed, and explains in a new tab what to do', async () => {
    const { page, panel } = await openPanel();
    const report = await openReport(panel);
    const before = await reachOf(report);
    const address = report.url();
    await page.close();
    await report.reload();
    await report.waitForSelector('.climb-plot');
    expect(await reachOf(report)).toBe(before);
    const late = await browser.context.newPage();
    await late.goto(address);
    await late.getByText('The page is no longer shaded. Go back to it').waitFor();
    await expectSound(late);
  });

  test('has the same reach when it is opened from the shelf, even after the page is closed', async () => {
    const { page, panel } = await openPanel();
    const reach = await reachOf(panel);
    await panel.getByRole('button', { name: 'Save to shelf' }).click();
    const shelved = browser.context.waitForEvent('page');
    await panel.getByRole('link', { name: 'Show on shelf' }).click();
    const shelf = await shelved;
    await page.close();
    const report = await openReport(shelf);
    expect(await reachOf(report)).toBe(reach);
    expect(await report.getByRole('article').getByRole('heading', { level: 1 }).textContent()).toBe(
      'The Night the Lamp Went Out',
    );
  });
});

describe('a printed or saved report', () => {
  test('fits one sheet of A4 or Letter paper without buttons, and includes the parts that are unfolded', async () => {
    const { panel } = await openPanel();
    const report = await openReport(panel);
    await report.emulateMedia({ colorScheme: 'dark' });
    for (const [format, width] of [
      ['A4', 595],
      ['Letter', 612],
    ] as const) {
      const pages = await readPdf(await report.pdf({ format, preferCSSPageSize: true }));
      expect(pages).toHaveLength(1);
      const lines = pages.flatMap(({ lines }) => lines.map(({ text }) => text));
      // Chromium makes a sheet half a point wider than A4 is.
      expect(Math.floor(pages[0]!.width)).toBe(width);
      expect(lines[0]).toBe('The Night the Lamp Went Out');
      const text = lines.join(' ');
      for (const part of [
        'Readable by step',
        'Missing patterns',
        'Not yet decodable',
        'judgement comes first',
      ])
        expect(text).toContain(part);
      expect(text).not.toMatch(
        /Print or save|Save as web page|Compare Herons with|All steps, as table|All words|Group settings/,
      );
    }
    await report.getByRole('heading', { name: 'All missing patterns' }).click();
    await report.getByRole('heading', { name: 'Group settings' }).click();
    const pages = await readPdf(await report.pdf({ format: 'A4', preferCSSPageSize: true }));
    expect(pages.length).toBeGreaterThan(1);
    const text = pages.flatMap(({ lines }) => lines.map((line) => line.text)).join(' ');
    expect(text).toContain('Decoding rules');
    for (const { lines } of pages)
      expect(lines.at(-1)!.text).not.toMatch(/^(Missing patterns|Not yet decodable|Group settings)$/);
  });

  test('is a web page that loads no other file and runs no script', async () => {
    const { panel } = await openPanel();
    const report = await openReport(panel);
    const started = report.waitForEvent('download');
    await report.getByRole('button', { name: 'Save as web page' }).click();
    const file = await started;
    expect(file.suggestedFilename()).toBe('The Night the Lamp Went Out - report for Herons.html');
    const html = await readFile(await file.path(), 'utf8');
    expect(html).not.toMatch(/<script|<link|<button|<input|<select|url\(|@import|chrome-extension/);

    const saved = await browser.open(browser.serve('report.html', html));
    expect(await reachOf(saved)).toBe(await reachOf(report));
    expect(await saved.locator('.climb-plot').boundingBox()).toMatchObject({ height: 176 });
    await expectSound(saved);
  });
});

test('the report on a passage uses the group’s own version with its story words', async () => {
  const desk = await browser.open(browser.inside('desk.html'));
  await desk
    .getByLabel('Text', { exact: true })
    .fill('# The ferry is late\nBram purchased a lantern and went to the shed.');
  await desk.getByRole('button', { name: 'Make a passage' }).click();
  await desk.locator('.desk-beyond').filter({ hasText: 'lantern' }).first().click();
  const before = await reachOf(desk);
  await desk.getByRole('button', { name: 'Pre-teach this word' }).click();
  await expect.poll(() => reachOf(desk)).not.toBe(before);
  const report = await openReport(desk);
  await expect.poll(() => reachOf(report)).toBe(await reachOf(desk));
  expect(await report.locator('.report-settings').textContent()).toContain('Words to pre-teachlantern');
  expect(await report.locator('.climb-name').textContent()).toContain(await reachOf(desk));
  expect(await report.getByText('Original text.').count()).toBe(1);

  // The report updates when a change at the desk is saved.
  await desk.getByRole('textbox', { name: /^Text for/ }).press('Control+End');
  await desk.keyboard.type(' Bram ran.');
  await report.getByText('Text adapted for Herons.').waitFor();
  await expect.poll(() => reachOf(report)).toBe(await reachOf(desk));
});
