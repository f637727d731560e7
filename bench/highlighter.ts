import { median } from './median.ts';
import type { BenchBrowser } from './open-bench-page.ts';
import { writePage } from './write-page.ts';

/** Milliseconds of marking and of marking again, and the number of elements added to the page. */
export interface Highlighting {
  readonly shade: number;
  readonly reshade: number;
  readonly added: number;
}

/** Medians for our own highlighting, and for the highlighting of the library by a list of words and by one pattern. */
export interface HighlighterTimes {
  readonly ours: Highlighting;
  readonly list: Highlighting;
  readonly pattern: Highlighting;
}

/**
 * Marks the words on a page that a group cannot read yet, with our code and with a general highlighter (mark.js, which
 * gets exactly the words that we mark). Then marks again for a group that is six steps further on. Neither time
 * includes the later drawing by the browser.
 */
export async function measureHighlighter(
  browser: BenchBrowser,
  words: number,
  runs: number,
): Promise<HighlighterTimes> {
  const page = await browser.open(writePage(words));
  const times = await page.evaluate(async (count) => {
    const all = document.getElementsByTagName('*');
    const before = all.length;
    const found: Record<'ours' | 'list' | 'pattern', Highlighting>[] = [];
    for (let run = 0; run <= count; run++) {
      const shade = await engine.shade();
      const now = await engine.markedWords();
      const reshade = await engine.reshade(18);
      const next = await engine.markedWords();
      const ours = { shade, reshade, added: all.length - before };
      await engine.reshade(12);
      await engine.stop();
      const theirs: Highlighting[] = [];
      for (const by of ['list', 'pattern'] as const) {
        const marked = await wordreachBench.markWords(now, by);
        const added = all.length - before;
        const unmarked = await wordreachBench.unmarkWords();
        const again = await wordreachBench.markWords(next, by);
        await wordreachBench.unmarkWords();
        theirs.push({ shade: marked, reshade: unmarked + again, added });
      }
      found.push({ ours, list: theirs[0]!, pattern: theirs[1]! });
    }
    return found.slice(1);
  }, runs);
  await page.close();
  const middle = (what: 'ours' | 'list' | 'pattern'): Highlighting => ({
    shade: median(times.map((time) => time[what].shade)),
    reshade: median(times.map((time) => time[what].reshade)),
    added: times[0]![what].added,
  });
  return { ours: middle('ours'), list: middle('list'), pattern: middle('pattern') };
}
