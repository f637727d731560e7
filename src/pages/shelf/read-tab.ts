import { askPage, askWords, setScope } from '../../host/page-talk/client.ts';
import { shadeFrames, shadePage } from '../../host/page-talk/page-access.ts';
import { readTabText } from '../../passage/files/read-tab.ts';
import { writePageDate } from '../../passage/files/write-page-date.ts';
import type { VettedText } from './add-to-shelf.ts';

/**
 * Reads the checked words on the page of a tab, and also its text if that is to be kept. A page that is not shaded is
 * shaded for a moment, which is visible on the page. Rejects with `TakeFault` when the page cannot be read or has no
 * words.
 */
export async function readTab(tab: number, keepsText: boolean): Promise<VettedText> {
  const isShaded = (await askWords(tab)) !== null;
  if (!isShaded) {
    await shadePage(tab);
    await shadeFrames(tab);
  }
  try {
    // `setScope` resolves only when the whole page has been read. Before that, some of the words would be missing.
    if (!isShaded) await setScope(tab, 'story');
    const { page, text } = await readTabText(tab);
    return {
      title: page.title,
      url: page.url || null,
      byline: page.byline,
      date: writePageDate(page.date),
      words: mergeKeys(page.words),
      skipped: page.skipped,
      text: keepsText ? text : null,
    };
  } finally {
    if (!isShaded) await askPage(tab, 'stop', undefined as never);
  }
}

/** Adds up the counts of each word, because a page and its frames may contain the same word. */
function mergeKeys(words: VettedText['words']): VettedText['words'] {
  const counts = new Map<string, number>();
  for (const [key, count] of words) counts.set(key, (counts.get(key) ?? 0) + count);
  return [...counts];
}
