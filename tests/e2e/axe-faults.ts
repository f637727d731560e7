import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { browserName } from './browser.ts';

/** What axe is to look at; all of a page by all of its rules where nothing is said. */
export interface AxeWish {
  /** A part of the page, as a selector. */
  readonly part?: string;
  readonly rules?: readonly string[];
  readonly tags?: readonly string[];
  /** Whether the frames of the page are looked at too, which takes longer. */
  readonly frames?: boolean;
}

export interface AxeFindings {
  /** Each rule that is broken, with the elements that break it. */
  readonly faults: string[];
  /** The rules that hold, and for how many elements; where frames are left out, one element of each is counted. */
  readonly passes: Readonly<Record<string, number>>;
}

/**
 * What axe finds in a page or a part of it, with its transitions at their end. Its code is put into a document once, whatever is looked at later. A frame is waited for as long as a
 * busy machine needs.
 */
export async function runAxe(page: Page, wish: AxeWish = {}): Promise<AxeFindings> {
  for (const frame of wish.frames ? page.frames() : [page.mainFrame()]) {
    const isThere = await frame.evaluate(() => {
      // Colours that still turn from light to dark have a contrast nobody sees for long.
      for (const each of document.getAnimations()) if (each instanceof CSSTransition) each.finish();
      return 'axe' in globalThis;
    });
    if (!isThere)
      await frame.evaluate(`${axe.source}; axe.configure({ allowedOrigins: ['<unsafe_all_origins>'] })`);
  }
  const { rules, tags } = wish;
  const options = {
    ...(rules && { runOnly: { type: 'rule' as const, values: [...rules] } }),
    ...(tags && { runOnly: { type: 'tag' as const, values: [...tags] } }),
    ...(wish.frames
      ? { frameWaitTime: 60_000, pingWaitTime: 10_000 }
      : { iframes: false, resultTypes: ['violations' as const] }),
  };
  return page.evaluate(
    async ({ part, options }) => {
      const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
      const { violations, passes } = await axe.run(part ?? document, options);
      return {
        faults: violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`),
        passes: Object.fromEntries(passes.map(({ id, nodes }) => [id, nodes.length])),
      };
    },
    { part: wish.part, options },
  );
}

/**
 * What axe finds wrong with a page, or with a part of it. It goes by a page's elements and styles, which are the same in Firefox, and takes some
 * seconds there: in Firefox nothing is asked, and `access.spec.ts` alone goes through every page of the extension. In the dark nothing but the
 * colours is another, so that only their contrast is looked at; each test looks at its page in light, too.
 */
export async function axeFaults(page: Page, part?: string): Promise<string[]> {
  if (browserName === 'firefox') return [];
  const isDark = await page.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches);
  const { faults } = await runAxe(page, {
    ...(part && { part }),
    ...(isDark && { rules: ['color-contrast'] }),
  });
  return faults;
}
