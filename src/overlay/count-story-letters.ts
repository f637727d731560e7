/** Selects parts whose paragraphs do not belong to a story. */
const BESIDE =
  'nav, aside, footer, form, dialog, [role="navigation"], [role="complementary"], [role="contentinfo"], [hidden], [class*="comment" i], [id*="comment" i], [class*="related" i]';
/** The least length of a paragraph in characters. Most of its characters must be outside links. */
const LONG = 80;

/**
 * Returns the number of characters of a paragraph that has the length and the place of a paragraph of a story. Returns 0
 * for any other paragraph, such as a list of links.
 */
export function countStoryLetters(paragraph: Element): number {
  const { length } = (paragraph.textContent ?? '').trim();
  if (length < LONG || paragraph.closest(BESIDE)) return 0;
  let linked = 0;
  for (const { textContent } of paragraph.querySelectorAll('a')) linked += textContent?.length ?? 0;
  return linked <= length / 2 ? length : 0;
}
