import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { onTestFailed, onTestFinished } from 'vitest';
import type { Standing } from '../../src/analyze/types.ts';
import type { WordExplanation } from '../../src/contract/page-contract.ts';
import { loadAnalyzer } from '../load-analyzer.ts';
import { type CardPage, type CardPageOptions, openCardPage, prepareCardPage } from './card-page.ts';

const analyzer = loadAnalyzer();
/** The words of the story, each with its explanation. */
const words: Readonly<Record<string, WordExplanation>> = {
  hoping: content('hoping', 'beyond', { o_e: 31, 'change-drop-e': null }),
  lighthouse: content('lighthouse', 'beyond', { igh: 44, 'ou-ow': 47, compound: 50 }),
  said: content('said', 'beyond', { irregular: null }),
  wind: content('wind', 'unsure', { 'i-long-closed': 52 }),
  glomtide: content('glomtide', 'unsure', { i_e: 40 }),
  ferry: content('ferry', 'fresh', {}),
  cat: content('cat', 'reads', {}),
};
/** A page with a word of every kind. */
export const STORY = `<!doctype html><title>Tarn Quay</title><body style="font: 18px/1.5 serif">
<p>Bram ran to the <w>lighthouse</w>, <w>hoping</w> to see a light.</p>
<p>The <w>wind</w> had put it out, <w>said</w> Otto. The <w>ferry</w> was late and the <w>cat</w> was wet.</p>`;

export interface Setting extends BrowserContextOptions, Partial<CardPageOptions> {}

/**
 * The page of the usual setting. It serves one test after the other, because a new page takes a second. A further page
 * in the same test is a new page.
 */
const usual: { page: Page | null; isTaken: boolean } = { page: null, isTaken: false };

/** Opens a page of the story, or of other HTML, with cards. The page stays open until the test ends. */
export async function openStory(
  browser: Browser,
  html = STORY,
  { swaps, mode, rest, isLate, ...setting }: Setting = {},
): Promise<CardPage> {
  const isUsual = Object.keys(setting).length === 0 && !usual.isTaken;
  const page = isUsual ? await takeUsualPage(browser) : await newPage(browser, setting);
  if (!isUsual) onTestFinished(() => page.context().close());
  const given = { swaps, mode, rest, isLate };
  const options = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
  return openCardPage(page, html, { words, ...options });
}

async function newPage(browser: Browser, setting: BrowserContextOptions): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 800, height: 900 }, ...setting });
  const page = await context.newPage();
  await prepareCardPage(page);
  return page;
}

async function takeUsualPage(browser: Browser): Promise<Page> {
  usual.isTaken = true;
  const page = usual.page ?? (await newPage(browser, {}));
  usual.page = page;
  page.once('close', () => {
    if (usual.page === page) usual.page = null;
  });
  // Closes the page after a failed test, so that nothing of the test remains for the next test.
  onTestFailed(() => page.context().close());
  onTestFinished(() => {
    usual.isTaken = false;
  });
  // Releases the key and the button, and moves the pointer away.
  await page.keyboard.up('Alt');
  await page.mouse.up();
  await page.goto('about:blank');
  await page.mouse.move(0, 0);
  return page;
}

/** Alt+clicks a word and waits for its card. */
export async function openOn(at: CardPage, word: string): Promise<void> {
  await at.word(word).click({ modifiers: ['Alt'] });
  await at.card.waitFor();
}

function content(word: string, standing: Standing, steps: WordExplanation['steps']): WordExplanation {
  return {
    analysis: analyzer.analyze(word),
    verdict: { standing, missing: Object.keys(steps) },
    steps,
    counts: 'judged',
    notYet: [],
  };
}
