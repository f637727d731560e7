import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { browserName } from './browser.ts';

/**
 * Axe for a page that holds no frames of other sites, as none of ours does: for them alone axe would carry all it saw over to another tab, which is
 * four fifths of the time. Only of what is wrong every place is told.
 */
export function axeFor(page: Page): AxeBuilder {
  return new AxeBuilder({ page: page as never }).setLegacyMode(true).options({ resultTypes: ['violations'] });
}

/**
 * What axe finds wrong with a page, or with a part of it. It goes by a page's elements and styles, which are the same in Firefox, and takes some
 * seconds there: in Firefox nothing is asked, and `access.spec.ts` alone goes through every page of the extension. In the dark nothing but the
 * colours is another, so that only their contrast is looked at; each test looks at its page in light, too.
 */
export async function axeFaults(page: Page, part?: string): Promise<string[]> {
  if (browserName === 'firefox') return [];
  const axe = axeFor(page);
  if (part) axe.include(part);
  if (await page.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches))
    axe.withRules(['color-contrast']);
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}
