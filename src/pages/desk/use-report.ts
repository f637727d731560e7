import { useEffect, useState } from 'preact/hooks';
import { type Judge, vet } from '../../analyze/index.ts';
import type { Report } from '../../analyze/types.ts';
import { countWords } from '../../passage/count-words.ts';
import type { ShadedLine } from '../../passage/shade-line.ts';
import { judgeWithStoryWords } from '../../passage/with-story-words.ts';

/** The judge of words for a group, and the function that shades a line for the group. */
export interface Judging {
  readonly judge: Judge;
  readonly shade: (line: string) => ShadedLine;
}

/** The longest stretch of work before the page gets a turn, in milliseconds. */
const SLICE = 10;

/**
 * Returns the report of a passage a moment after the passage changed. A long text is shaded in slices, so that the
 * teacher can work on it meanwhile. The report is null at first. Later the last report stays until the next one is
 * made.
 */
export function useReport(
  text: string | null,
  judging: Judging | null,
  storyWords: readonly string[],
): Report | null {
  const [report, setReport] = useState<Report | null>(null);
  useEffect(() => {
    if (text === null || !judging) return setReport(null);
    const controller = new AbortController();
    void shadeInSlices(text, judging.shade, controller.signal).then(() => {
      if (controller.signal.aborted) return;
      setReport(vet(countWords(text, judging.shade), judgeWithStoryWords(judging.judge, storyWords)));
    });
    return () => controller.abort();
  }, [text, judging, storyWords]);
  return report;
}

/** Shades each line once. The shader remembers the shaded lines. */
async function shadeInSlices(text: string, shade: Judging['shade'], signal: AbortSignal): Promise<void> {
  let began = performance.now();
  for (const line of text.split('\n')) {
    shade(line);
    if (performance.now() - began < SLICE) continue;
    await new Promise((turn) => setTimeout(turn));
    if (signal.aborted) return;
    began = performance.now();
  }
}
