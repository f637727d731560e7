import { type Analyzer, catalogue, hasBit, type Judge, neededOf, type WordCounts } from '../analyze/index.ts';
import type { PatternId } from '../analyze/types.ts';

/** The number of words in a text that practise the patterns a group is being taught now. */
export interface Practice {
  /** The number of running words that practise any pattern of the step. */
  readonly words: number;
  /** Each pattern of the step, with the number of running words that have it. The most practised patterns come first. */
  readonly patterns: readonly { readonly pattern: PatternId; readonly words: number }[];
}

/**
 * Counts the running words that practise the patterns of the group's step. At a step that teaches ee:
 * - `tree` counts, and so does `green` if gr can be read.
 * - `trees` does not count while -s is not taught.
 * - `been` does not count, since the group knows it by sight.
 */
export function countPractice(
  { words }: WordCounts,
  judge: Judge,
  engine: Pick<Analyzer, 'analyze'>,
): Practice {
  const { fresh } = judge.group;
  const counts = new Map(catalogue.filter(({ id }) => hasBit(fresh, id)).map(({ id }) => [id, 0]));
  let all = 0;
  for (const [key, count] of words) {
    if (judge(key).standing !== 'fresh') continue;
    all += count;
    const practised = engine
      .analyze(key)
      .readings.map((reading) => neededOf(reading, judge.group).filter((id) => counts.has(id)))
      .find((ids) => ids.length > 0);
    for (const id of practised ?? []) counts.set(id, counts.get(id)! + count);
  }
  const patterns = [...counts].map(([pattern, words]) => ({ pattern, words }));
  return { words: all, patterns: patterns.sort((one, other) => other.words - one.words) };
}
