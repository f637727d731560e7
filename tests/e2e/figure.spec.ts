import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { FIGURE_LIMITS, type LimitName } from '../../src/pages/panel/figure-limits.ts';
import { axeFaults } from './axe-faults.ts';
import { startBrowser, type TestBrowser } from './browser.ts';
import { CHART, PDF, SLIDE, STORY, textLayer } from './figure-pages.ts';

let browser: TestBrowser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterEach(async () => {
  for (const page of browser.context.pages().slice(1)) await page.close();
});
afterAll(() => browser?.close());

/**
 * Presses the button on a page and returns the page with its panel, once the panel shows a figure or the reason why
 * there is none.
 */
async function panelOf(html: string): Promise<{ page: Page; panel: Page }> {
  browser.serve('tides.pdf', PDF);
  browser.serve('book.html', STORY);
  const page = await browser.open(
    browser.serve('page.html', `<!doctype html><html lang="en"><title>Tarn Quay</title>${html}`),
  );
  await browser.press(page);
  const panel = await browser.openPanel(page);
  await panel.waitForSelector('.reach, .scope-part + .note');
  return { page, panel };
}

/** Opens another page in the tab whose panel is open, and presses the button there. */
async function goOnTo(html: string, { page, panel }: { page: Page; panel: Page }): Promise<void> {
  const title = 'The page after it';
  await page.goto(
    browser.serve('other.html', `<!doctype html><html lang="en"><title>${title}</title>${html}`),
  );
  await browser.press(page);
  await panel.locator('.page-title', { hasText: title }).waitFor();
  await panel.waitForSelector('.reach');
}

/** Returns the line above the figure, or the note shown in place of the figure. */
async function lineOf(panel: Page): Promise<string> {
  return (await panel.locator('.scope-part + p.quiet, .scope-part + .note p').allTextContents())
    .slice(0, 1)
    .join();
}

const MENU = '<nav><a href="#">File</a> <a href="#">Edit the page</a> <a href="#">Help</a></nav>';
const full = 'style="position:fixed;left:0;top:60px;width:1200px;height:800px;border:0"';
const side = 'width="300" height="200"';
const rows = (count: number) =>
  Array.from(
    { length: count },
    (_, i) => `<div style="height:30px">The fog came in at dawn on day ${i}</div>`,
  ).join('');
const CUT = `<div style="height:120px;overflow:hidden;position:relative">${STORY}</div>`;

/**
 * For each limit: a sentence, a page for which the panel shows the sentence, and a similar page for which the panel
 * does not.
 */
const CASES: readonly (readonly [limit: LimitName, says: RegExp, example: string, counterExample: string])[] =
  [
    ['otherLanguage', /in Welsh/, `<main lang="cy">${STORY}</main>`, `<main lang="en-GB">${STORY}</main>`],
    [
      'mostlySkipped',
      /is not counted, so no percentage/,
      `<p>The tide: 1 2 3 4 5 6 7 8 9 10</p>`,
      `${STORY}<p>1 2 3 4 5 6 7 8</p>`,
    ],
    [
      'fullFrame',
      /because it is a PDF: tides\.pdf/,
      `${MENU}<embed ${full} src="tides.pdf">`,
      `${MENU}<iframe ${full} src="book.html"></iframe>`,
    ],
    ['fullFrame', /because it is a PDF/, `${MENU}<object ${full} data="tides.pdf"></object>`, STORY],
    ['fullFrame', /because it is a PDF/, `${MENU}<iframe ${full} src="tides.pdf"></iframe>`, STORY],
    [
      'fullFrame',
      /does not let extensions in.*: a part of the page/,
      `${MENU}<iframe ${full} sandbox srcdoc="<p>The ferry came in at dawn."></iframe>`,
      `${MENU}<iframe ${full} srcdoc="<p>The ferry came in at dawn."></iframe>`,
    ],
    [
      'fullFrame',
      /does not let extensions in.*: Our book/,
      `${MENU}<iframe ${full} title="Our book" sandbox="allow-scripts" src="book.html"></iframe>`,
      `${MENU}<iframe ${full} sandbox="allow-same-origin" src="book.html"></iframe>`,
    ],
    [
      'canvas',
      /is a drawing/,
      `${MENU}<canvas ${full} width="1200" height="800"></canvas>`,
      `<canvas ${full} width="1200" height="800"></canvas>${textLayer()}`,
    ],
    [
      'canvas',
      /is a drawing/,
      `<canvas ${full} width="1200" height="800"></canvas><div ${full}></div>${MENU}`,
      `<canvas style="position:fixed;inset:0;width:100%;height:100%;z-index:-1"></canvas><main style="min-height:90vh">${STORY}</main>`,
    ],
    [
      'written',
      /field for writing/,
      `${MENU}<div contenteditable>${STORY}</div>`,
      `${STORY}<textarea>I like the bell</textarea>`,
    ],
    [
      'written',
      /field for writing/,
      `<body contenteditable>${STORY}`,
      `<body contenteditable="false">${STORY}`,
    ],
    [
      'written',
      /field for writing/,
      `${STORY}<script>document.designMode = 'on'</script>`,
      `${STORY}<script>document.designMode = 'off'</script>`,
    ],
    [
      'written',
      /field for writing/,
      `<textarea>The ferry came in at dawn</textarea>`,
      `${STORY}<textarea hidden>${STORY.repeat(3)}</textarea>`,
    ],
    ['covered', /hidden on the page/, CUT, `<div style="height:120px;overflow:auto">${STORY}</div>`],
    [
      'covered',
      /hidden on the page/,
      `${STORY}<div style="position:fixed;inset:0;background:#fff"><p>Subscribe to read on</p></div>`,
      `${STORY}<div style="position:fixed;bottom:0;height:30px;width:100%;background:#fff">Biscuits</div>`,
    ],
    [
      'covered',
      /hidden on the page/,
      `<body style="overflow:hidden">${STORY.repeat(5)}`,
      `<body>${STORY.repeat(5)}`,
    ],
    [
      'rows',
      /more rows/,
      `<div style="height:200px;overflow:auto">${rows(8)}<div style="height:9000px"></div></div>`,
      `<div style="height:200px;overflow:auto">${rows(200)}</div>`,
    ],
    [
      'rows',
      /more rows/,
      `<div role="grid" aria-rowcount="500">${'<div role="row"><span role="gridcell">The fog came in</span></div>'.repeat(5)}</div>`,
      `<div role="grid" aria-rowcount="5">${'<div role="row"><span role="gridcell">The fog came in</span></div>'.repeat(5)}</div>`,
    ],
    [
      'rows',
      /more rows/,
      `${rows(9)}<div style="height:20000px"></div>`,
      `${rows(9)}<img style="display:block;height:20000px;width:300px">`,
    ],
    [
      'paid',
      /costs money/,
      `<script type="application/ld+json">{"@type":"NewsArticle","isAccessibleForFree":"False"}</script>${STORY}`,
      `<script type="application/ld+json">{"@type":"NewsArticle","isAccessibleForFree":true}</script>${STORY}`,
    ],
    [
      'frame',
      /because it is a PDF/,
      `${STORY}<iframe ${side} src="tides.pdf"></iframe>`,
      `${STORY}<iframe ${side} src="book.html"></iframe>`,
    ],
    [
      'picture',
      /picture fills/,
      `${MENU}<img ${full} src="/red.svg">`,
      `${STORY}<img ${full.replace('fixed', 'absolute')} src="/red.svg">`,
    ],
  ];

test('every limit of the figure has an example page, except restless parts and silent frames', () => {
  expect([...new Set([...CASES.map(([limit]) => limit), 'restless', 'silentFrames'])].sort()).toEqual(
    FIGURE_LIMITS.map(({ name }) => name).sort(),
  );
});

describe('the line above the figure', () => {
  test.each(CASES.map(([limit, ...rest], i) => [`${i + 1} ${limit}`, limit, ...rest] as const))(
    'names %s on its example page, but not on a similar page',
    async (_title, limit, says, example, counterExample) => {
      browser.serve(
        'red.svg',
        '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><rect width="9" height="9" fill="red"/></svg>',
      );
      const shown = await panelOf(example);
      const { panel } = shown;
      await expect.poll(() => lineOf(panel)).toMatch(says);
      const isWithheld = FIGURE_LIMITS.find(({ name }) => name === limit)!.withheld === true;
      expect(await panel.locator('.reach-figure').count()).toBe(
        isWithheld || (await panel.locator('.reach').count()) === 0 ? 0 : 1,
      );
      await goOnTo(counterExample, shown);
      expect(await lineOf(panel)).not.toMatch(says);
    },
  );

  test('shows only the most important limit, and has no axe faults in light or dark', async () => {
    const { panel } = await panelOf(
      `<body contenteditable="false"><iframe ${side} src="tides.pdf"></iframe><main lang="cy">${CUT}</main>`,
    );
    expect(await panel.locator('.scope-part ~ p.quiet[role="status"]').count()).toBe(1);
    await expect.poll(() => lineOf(panel)).toMatch(/in Welsh/);
    for (const colorScheme of ['light', 'dark'] as const) {
      await panel.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      expect(await axeFaults(panel)).toEqual([]);
    }
  });

  test('is missing when the figure covers all text, and the panel says that marks are printed', async () => {
    const { panel } = await panelOf(STORY);
    expect(await lineOf(panel)).toBe('');
    expect(await panel.locator('main').textContent()).toContain('marks print with the page');
  });
});

/** Returns the number of words of a page as the panel counts them, including names. */
async function running(panel: Page): Promise<number> {
  const text = (await panel.locator('.reach').textContent()) ?? '';
  const [words, names] = [/of ([\d,]+) words/, /(\d+) names?/].map((said) =>
    Number(said.exec(text)?.[1] ?? 0),
  );
  return words! + names!;
}

describe('text in an unusual form', () => {
  test('in runs of three letters over a scanned page is read as whole words', async () => {
    const { panel } = await panelOf(textLayer());
    // The words of the page's three lines, counted by hand: 8 + 8 + 6.
    await expect.poll(() => running(panel)).toBe(22);
    expect(await lineOf(panel)).toBe('');
  });

  test('on an SVG slide is read, and the labels of an SVG chart are not', async () => {
    const slide = await panelOf(SLIDE);
    await expect.poll(() => running(slide.panel)).toBe(17); // 6 + 6 + 5, by hand
    const { panel } = await panelOf(CHART);
    expect(await panel.locator('.note').textContent()).toContain('no words to read');
  });

  test('in a closed shadow root is read and marked, and the root is restored afterwards', async () => {
    const { page, panel } = await panelOf(
      `<p>Fog.</p><tarn-story></tarn-story><script>
        const root = document.querySelector('tarn-story').attachShadow({ mode: 'closed' });
        root.innerHTML = ${JSON.stringify(STORY)};
        globalThis.shadow = root;
      </script>`,
    );
    await expect.poll(() => running(panel)).toBeGreaterThan(100);
    const marks = () => page.evaluate(() => CSS.highlights.get('wr-1')?.size ?? 0);
    await expect.poll(marks).toBeGreaterThan(5);
    const sheets = () =>
      page.evaluate(() => (globalThis as unknown as { shadow: ShadowRoot }).shadow.adoptedStyleSheets.length);
    expect(await sheets()).toBe(1);
    await browser.press(page);
    await expect.poll(sheets).toBe(0);
  });
});
