import { useEffect, useState } from 'preact/hooks';
import { type Judge, vet } from '../../analyze/index.ts';
import type { Report } from '../../analyze/types.ts';
import { countWords } from '../../passage/count-words.ts';
import type { ShadedLine } from '../../passage/shade-line.ts';
import { judgeWithStoryWords } from '../../passage/with-story-words.ts';

/** The judge of words for a group, and the shading of a line for it. */
export interface Judging {
  readonly judge: Judge;
  readonly shade: (line: string) => ShadedLine;
}

/** Longest stretch of work before the page gets its turn, in milliseconds. */
const SLICE = 10;

/**
 * The report of a passage, a moment after it changed: a long text is shaded in slices, so that it can be worked on
 * meanwhile. Null until there is one; then the last one stays until the next is made.
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

/** Shades each line once; the shader remembers them. */
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
