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
 * Shades a page, and beside it walks its text and cuts it into words, nothing else. Ours is all that the page's
 * thread does: the walk, the words, the messages to a background that knows them, and the marks.
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

/** The power of the number of words by which the time grows: the slope of a straight line through both logarithms (least squares). */
export function growthOf(times: readonly Pick<FloorTimes, 'words' | 'ours'>[]): number {
  const points = times.map(({ words, ours }) => [Math.log(words), Math.log(ours)] as const);
  const mean = (of: 0 | 1): number => points.reduce((sum, point) => sum + point[of], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const slope = points.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0);
  return slope / points.reduce((sum, [a]) => sum + (a - x) ** 2, 0);
}
