import type { Page } from 'playwright-core';
import type { TestBrowser } from './browser.ts';

/**
 * The pages of the extension that open by themselves, without pdf.html and card.html, some of them in several views.
 * Each is given by its address, with an element that exists once the page is ready.
 */
export const ownPages = {
  'welcome.html': '.welcome-step',
  'practice.html': 'article',
  'sidepanel.html': 'main',
  'groups.html': '.field-large',
  'groups.html#sequence/steady-steps': 'main li',
  'groups.html#paste': 'textarea',
  'groups.html#share': 'input[type=file]',
  'desk.html': 'textarea',
  'lesson.html#plovers': '.lesson-part',
  'shelf.html': '.shelf-filters',
  'shelf.html#add': 'input[type=file]',
  'shelf.html#file': 'input[type=file]',
  'picture.html': 'input[type=file]',
  'report.html': '.note',
  'help.html': '.help-keys',
  'privacy.html': 'h1',
} as const;

/** Opens one of the extension's own pages and waits until it is ready. */
export async function openOwnPage(browser: TestBrowser, address: keyof typeof ownPages): Promise<Page> {
  const page = await browser.open(browser.inside(`${address}`));
  await page.locator(ownPages[address]).first().waitFor();
  return page;
}
