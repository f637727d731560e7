import { useEffect, useState } from 'preact/hooks';
import { type Judge, vet, type WordCounts } from '../../analyze/index.ts';
import type { Report } from '../../analyze/types.ts';
import { countWords } from '../../passage/count-words.ts';
import type { ShadedLine } from '../../passage/shade-line.ts';
import { takeStepsInSlices } from '../../passage/take-steps.ts';
import { judgeWithStoryWords } from '../../passage/with-story-words.ts';

/** The judge of words for a group, and the function that shades a line for the group. */
export interface Judging {
  readonly judge: Judge;
  readonly shade: (line: string) => ShadedLine;
}

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
    void takeStepsInSlices(countInSteps(text, judging.shade), controller.signal).then((counts) => {
      if (counts) setReport(vet(counts, judgeWithStoryWords(judging.judge, storyWords)));
    });
    return () => controller.abort();
  }, [text, judging, storyWords]);
  return report;
}

/** Shades each line once, and then counts. The shader remembers the shaded lines. */
function* countInSteps(text: string, shade: Judging['shade']): Generator<undefined, WordCounts> {
  for (const line of text.split('\n')) {
    shade(line);
    yield;
  }
  return countWords(text, shade);
}
