import type { Browser, BrowserContextOptions } from 'playwright-core';
import type { Standing } from '../../src/analyze/types.ts';
import type { WordExplanation } from '../../src/contract/page-contract.ts';
import { loadAnalyzer } from '../load-analyzer.ts';
import { type CardPage, type CardPageOptions, openCardPage } from './card-page.ts';

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

/** A page of the story, or of other html, with cards. */
export async function openStory(
  browser: Browser,
  html = STORY,
  { swaps, mode, rest, ...setting }: Setting = {},
): Promise<CardPage> {
  const context = await browser.newContext({ viewport: { width: 800, height: 900 }, ...setting });
  const given = { swaps, mode, rest };
  const options = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
  return openCardPage(await context.newPage(), html, { words, ...options });
}

/** Alt+click on a word, and its card. */
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
