import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startPlainBrowser } from './browser.ts';
import { openOverlayPage } from './overlay-page.ts';

let tab: Page;
beforeAll(async () => {
  const browser = await startPlainBrowser();
  tab = await browser.newPage();
});
afterAll(() => tab?.context().browser()?.close());

const story = `<main><article><h1>The Marigold is back</h1>
  <p>The ferry came in late that night, and the crew had to tie her up in the dark by the lighthouse.</p>
  <p>Her engine had been in bits on the floor of the old boat shed for nine days, and Otto had oil on his ears.</p>
  <p>In the morning forty pupils of the school stood on the quay and sang for her, loudly and not together.</p></article></main>`;

/** Shades a page and returns the words that were marked before the story was found, and the words marked at the end. */
async function marksOf(html: string): Promise<{ early: string; last: string }> {
  await tab.goto('about:blank');
  const at = await openOverlayPage(
    tab,
    `<!doctype html><title>The Marigold is back</title>${html}`,
    undefined,
    null,
  );
  const early = await tab.evaluate(() => wordreachTest.markedEarly.join(' '));
  return { early, last: await at.marked() };
}

describe('before the story of a page is found,', () => {
  test('the paragraphs in view are marked', async () => {
    const { early, last } = await marksOf(story);
    for (const words of ['The ferry came', 'for nine days', 'In the morning']) expect(early).toContain(words);
    for (const word of early.split(' ')) expect(last).toContain(word);
  });

  test('neither its menu nor its short lines are marked', async () => {
    const menu =
      '<nav><p>Tides Sport The Ferry Lost and Found Jobs Letters Weather Shops Harbour School Boats Maps</p></nav>';
    const { early } = await marksOf(`${menu}${story}<footer><p>Printed on the quay.</p></footer>`);
    expect(early).not.toMatch(/Tides|Printed/);
    expect(early).toContain('ferry');
  });

  test('a paragraph below the view is not marked', async () => {
    const { early, last } = await marksOf(
      story.replace('<p>In the morning', '<div style="height: 900px"></div><p>In the morning'),
    );
    expect(early).not.toContain('morning');
    expect(last).toContain('morning');
  });
});

test('a paragraph that was marked early and is no part of the story loses its marks', async () => {
  const letters =
    '<p>Dear editor, the last boat leaves at four on Sundays, and there is none at all on the day of the fair.</p>';
  const { early, last } = await marksOf(
    `${story}<ul><li><a href="/1">Tides</a></li><li><a href="/2">Sport</a>${letters}</li><li><a href="/3">Jobs</a></li></ul>`,
  );
  expect(early).toContain('Dear editor');
  expect(last).toContain('ferry');
  expect(last).not.toContain('Dear editor');
});

test('a page without paragraphs is marked when its text has been read', async () => {
  const { early, last } = await marksOf(story.replaceAll(/<(\/?)p>/g, '<$1div>'));
  expect(early).toBe('');
  expect(last).toContain('ferry');
});
