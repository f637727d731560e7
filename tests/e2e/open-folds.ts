import type { Page } from 'playwright-core';

/** Opens the folded parts of the panel: the line of the group and the missing patterns of later steps. */
export async function openFolds(panel: Page): Promise<void> {
  await panel.locator('.group > details').waitFor();
  await panel.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('.group > details, .missing > details'))
      fold.open = true;
    for (const more of document.querySelectorAll<HTMLElement>(
      '.missing > details .gap-rows > [aria-expanded="false"]',
    ))
      more.click();
  });
}
