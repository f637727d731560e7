import type { Page } from 'playwright-core';

/** A page of either browser that the tests use. */
interface Evaluating {
  evaluate<T>(run: () => T): Promise<T>;
}

/**
 * Returns the text of every marked word of a page, by kind of mark and in page order. `beyond` includes both marks of
 * words that are not yet decodable. Pieces of one word in two nodes stay separate.
 */
export async function markedWords(
  page: Evaluating,
): Promise<Record<'beyond' | 'fresh' | 'unsure', string[]>> {
  const [beyond = [], fresh = [], unsure = []] = await page.evaluate(() =>
    [['wr-1', 'wr-5'], ['wr-2'], ['wr-3']].map((names) =>
      (names.flatMap((name) => [...(CSS.highlights.get(name) ?? [])]) as StaticRange[])
        .sort((a, b) => {
          if (a.startContainer === b.startContainer) return a.startOffset - b.startOffset;
          const order = a.startContainer.compareDocumentPosition(b.startContainer);
          return order & Node.DOCUMENT_POSITION_FOLLOWING ? -1 : 1;
        })
        .map(({ startContainer, startOffset, endOffset }) =>
          (startContainer as Text).data.slice(startOffset, endOffset),
        ),
    ),
  );
  return { beyond, fresh, unsure };
}

/**
 * Waits for all marks of a page. The paragraphs in view are marked first. All marks are there when two looks in a row see
 * the same number.
 */
export async function whenMarked(page: Page): Promise<void> {
  await page.waitForFunction(
    () => {
      const marks = [...CSS.highlights.values()].reduce((sum, { size }) => sum + size, 0);
      const holder = window as { marksBefore?: number };
      const isSame = marks > 0 && marks === holder.marksBefore;
      holder.marksBefore = marks;
      return isSame;
    },
    null,
    { polling: 400 },
  );
}
