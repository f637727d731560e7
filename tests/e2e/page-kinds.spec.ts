import { existsSync, readdirSync, readFileSync } from 'node:fs';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { splitKey } from '../../src/analyze/index.ts';
import { startPlainBrowser } from './browser.ts';
import { openOverlayPage } from './overlay-page.ts';

/**
 * Kinds of pages, all written for this project.
 * - `name.expected.txt` holds the words of `name.html` in page order, as the overlay requests them: in lower case,
 * except for a capital inside a sentence.
 * - A line that starts with `# ` is a remark.
 * - If a page has its own function `change`, the words after the change follow a line `after the change`.
 * The lists of words were made by looking at the pages.
 */
const FOLDER = new URL('../pages/kinds/', import.meta.url);
const kinds = readdirSync(FOLDER).flatMap((file) => /^(.*)\.html$/.exec(file)?.[1] ?? []);

let context: BrowserContext;
/**
 * Two pages show the kinds one after another: `read` with the overlay, and `clean` without it. Both pages are reused,
 * since a new page takes a second.
 */
let read: Page;
let clean: Page;
beforeAll(async () => {
  const browser = await startPlainBrowser();
  context = await browser.newContext({ viewport: { width: 1200, height: 2000 } });
  [read, clean] = [await context.newPage(), await context.newPage()];
});
beforeEach(async () => {
  for (const page of [clean, read]) await page.goto('about:blank');
  await read.bringToFront();
});
afterAll(() => context?.browser()?.close());

test('there are at least thirty kinds of pages', () => {
  expect(kinds.length).toBeGreaterThanOrEqual(30);
});

describe('the words of a page', () => {
  test.each(kinds)('are all read and marked on a page of the kind “%s”', async (kind) => {
    const html = readFileSync(new URL(`${kind}.html`, FOLDER), 'utf8');
    const words = new URL(`${kind}.expected.txt`, FOLDER);
    expect(
      existsSync(words),
      `write the words a reader sees into tests/pages/kinds/${kind}.expected.txt`,
    ).toBe(true);
    const expected = readFileSync(words, 'utf8');
    const [first, later] = expected.split('after the change\n').map(wordsOf);

    await clean.setContent(html);
    const source = () => document.documentElement.outerHTML;
    const untouched = await clean.evaluate(source);

    const at = await openOverlayPage(read, html);
    await expectWords(first!);
    expect(await at.page.evaluate(source)).toBe(untouched);
    if (later) {
      const change = 'change()';
      await clean.evaluate(change);
      await at.page.evaluate(change);
      await expect.poll(() => at.page.evaluate(placesInPage).then(keysOf)).toBe(later);
      await expectWords(later);
      expect(await at.page.evaluate(source)).toBe(await clean.evaluate(source));
    }
    await at.stop();
    expect(await at.page.evaluate(source)).toBe(await clean.evaluate(source));
    expect(await at.page.evaluate(() => CSS.highlights.size)).toBe(0);

    /** Expects the words in order, with all their letters marked and no other marks. */
    async function expectWords(words: string): Promise<void> {
      const { places, marks } = await at.page.evaluate(placesInPage);
      expect(keysOf({ places })).toBe(words);
      expect(places.filter(({ isMarked }) => !isMarked)).toEqual([]);
      expect(marks).toBe(places.reduce((sum, { ranges }) => sum + ranges, 0));
      for (const { key, letters } of places) expect(plain(letters)).toBe(splitKey(key).word.toLowerCase());
    }
  });
});

/** Returns the words of a file of expected words, without the remarks. */
function wordsOf(text: string): string {
  return text
    .replace(/^# .*$/gm, '')
    .split(/\s+/)
    .filter(Boolean)
    .join(' ');
}

/**
 * Returns the words without the signs for a capital and for the reading of words that are spelt alike. These signs do
 * not depend on the page.
 */
function keysOf({ places }: { places: { key: string }[] }): string {
  return places.map(({ key }) => splitKey(key).word).join(' ');
}

/**
 * Returns letters in the form used for comparison: in lower case, without characters of zero width, and with ligatures
 * split.
 */
function plain(letters: string): string {
  return letters
    .replace(/[\u00AD\u200B-\u200D\u2060\uFEFF]/g, '')
    .replaceAll('’', "'")
    .normalize(/[\uFB00-\uFB06]/.test(letters) ? 'NFKC' : 'NFC')
    .toLowerCase();
}

/** Goes from word to word as a reader does, once around the page, and returns the places. */
function placesInPage() {
  const { finder } = wordreachTest.overlay;
  // The marks are compared by their content, because a place makes new ranges each time.
  const marked = new Map<Node, Set<string>>();
  let marks = 0;
  // Every word is beyond on this page. Letters that are not painted in the colour of their text have highlights of
  // their own.
  const ranges = [...CSS.highlights].flatMap(([name, highlight]) =>
    name === 'wr-4' ? [] : ([...highlight] as StaticRange[]),
  );
  for (const { startContainer, startOffset, endOffset } of ranges) {
    const spans = marked.get(startContainer) ?? new Set();
    marked.set(startContainer, spans.add(`${startOffset} ${endOffset}`));
    marks++;
  }
  const places: { key: string; letters: string; ranges: number; isMarked: boolean }[] = [];
  scrollTo(0, 0);
  const first = finder.next(null, 1, () => true);
  for (let place = first; place; ) {
    const pieces = place.ranges.map(({ startContainer, startOffset, endOffset }) =>
      (startContainer as Text).data.slice(startOffset, endOffset),
    );
    places.push({
      key: place.key,
      letters: pieces.join(''),
      ranges: pieces.length,
      isMarked: place.ranges.every(({ startContainer, startOffset, endOffset }) =>
        marked.get(startContainer)?.has(`${startOffset} ${endOffset}`),
      ),
    });
    place = finder.next(place, 1, () => true);
    if (place === first) break;
  }
  return { places, marks };
}
