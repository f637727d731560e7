import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { browserName } from './browser.ts';

/** The scope of an axe run. By default axe checks the whole page with all rules. */
export interface AxeWish {
  /** A selector for a part of the page. */
  readonly part?: string;
  readonly rules?: readonly string[];
  readonly tags?: readonly string[];
  /** Whether the frames of the page are checked too, which takes longer. */
  readonly frames?: boolean;
}

export interface AxeFindings {
  /** The broken rules, each with the elements that break it. */
  readonly faults: string[];
  /** The rules that hold, with the number of elements. If frames are left out, one element is counted for each rule. */
  readonly passes: Readonly<Record<string, number>>;
}

/**
 * Returns the results of axe for a page or a part of it, with its transitions finished. The code of axe is inserted
 * into a document once, for all later runs. The function waits for a frame as long as a busy machine needs.
 */
export async function runAxe(page: Page, wish: AxeWish = {}): Promise<AxeFindings> {
  for (const frame of wish.frames ? page.frames() : [page.mainFrame()]) {
    const isThere = await frame.evaluate(() => {
      // Colours that are still changing from light to dark have a contrast that is visible only for a moment.
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
 * Returns the faults that axe finds in a page or a part of it. axe checks elements and styles, which are the same in
 * Firefox, and takes some seconds there. In Firefox this function therefore checks nothing, and only `access.spec.ts`
 * checks every page of the extension. In dark mode only the colours differ, so only contrast is checked. Each test
 * checks its page in light mode too.
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
