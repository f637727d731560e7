import { median } from './median.ts';
import type { BenchBrowser } from './open-bench-page.ts';
import { measureThread } from './thread-time.ts';
import { writePage } from './write-page.ts';

/** Medians of the milliseconds that a page's main thread works on a page of the given number of words. */
export interface FloorTimes {
  readonly words: number;
  readonly floor: number;
  readonly ours: number;
  /** The browser's own time to draw the marks, shown beside ours. */
  readonly drawing: number;
  /** Time of the first run in a page, when the code is not compiled yet. */
  readonly first: number;
}

/**
 * Measures two kinds of work on a page. The floor is only to walk the text and cut it into words. Our work is all that
 * the page's thread does to shade the page: the walk, the words, the messages to a background that knows the words, and
 * the marks.
 */
export async function measureFloor(browser: BenchBrowser, words: number, runs: number): Promise<FloorTimes> {
  const page = await browser.open(writePage(words));
  const floor = await measureThread(page, runs + 1, async () => void wordreachBench.walkAndCut());
  const ours = await measureThread(
    page,
    runs + 1,
    async () => void (await engine.shade()),
    () => engine.stop(),
  );
  await page.close();
  // The browser compiles the code during the first run, which is left out.
  return {
    words,
    floor: median(floor.slice(1).map(({ work }) => work)),
    ours: median(ours.slice(1).map(({ work }) => work)),
    drawing: median(ours.slice(1).map(({ drawing }) => drawing)),
    first: ours[0]!.work,
  };
}

/**
 * Returns the power of the number of words with which the time grows. This is the slope of a straight line (least
 * squares) through the logarithms of the times and of the numbers of words.
 */
export function growthOf(times: readonly Pick<FloorTimes, 'words' | 'ours'>[]): number {
  const points = times.map(({ words, ours }) => [Math.log(words), Math.log(ours)] as const);
  const mean = (of: 0 | 1): number => points.reduce((sum, point) => sum + point[of], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const slope = points.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0);
  return slope / points.reduce((sum, [a]) => sum + (a - x) ** 2, 0);
}
