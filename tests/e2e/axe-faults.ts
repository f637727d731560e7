import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { browserName } from './browser.ts';

/**
 * What axe finds wrong with a page, or with a part of it. It goes by a page's elements and styles, which are the same in Firefox, and takes some
 * seconds there: in Firefox nothing is asked, and `access.spec.ts` alone goes through every page of the extension.
 */
export async function axeFaults(page: Page, part?: string): Promise<string[]> {
  return findFaults(page, part);
}

/** What axe goes by colours for; everything else it says alike of a page in light and in dark. */
const BY_COLOUR = ['color-contrast', 'link-in-text-block'];

/** The same for a page that is shown in light and in dark, one after the other: in dark only what goes by colours is asked again. */
export async function axeFaultsIn(scheme: 'light' | 'dark', page: Page, part?: string): Promise<string[]> {
  return findFaults(page, part, scheme === 'dark' ? BY_COLOUR : undefined);
}

async function findFaults(page: Page, part?: string, rules?: string[]): Promise<string[]> {
  if (browserName === 'firefox') return [];
  const axe = new AxeBuilder({ page: page as never });
  if (part) axe.include(part);
  if (rules) axe.withRules(rules);
  const { violations } = await axe.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}
