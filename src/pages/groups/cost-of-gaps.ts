import { type Analyzer, compileGroup, createJudge } from '../../analyze/index.ts';
import type { Group, PatternId, Sequence } from '../../analyze/types.ts';

/** A pattern that a sequence never teaches, with the common words that need it. */
export interface CostOfGap {
  readonly pattern: PatternId;
  /** The words in the order of the list. */
  readonly words: readonly string[];
}

/**
 * Returns the patterns that a sequence never teaches, with the words of a list that a group cannot read after the last
 * step for lack of the pattern. The pattern with the most words comes first. A word that lacks two patterns counts for
 * both patterns. By-sight words cost nothing.
 */
export function costOfGaps(
  words: readonly string[],
  engine: Analyzer,
  group: Group,
  sequence: Sequence,
): readonly CostOfGap[] {
  const after = { ...group, sequence: sequence.id, step: sequence.steps.length };
  const judge = createJudge(engine, compileGroup(after, sequence));
  const needing = new Map<PatternId, string[]>();
  for (const word of words) {
    for (const pattern of judge(word).missing) {
      if (pattern === 'irregular') continue;
      const before = needing.get(pattern);
      if (before) before.push(word);
      else needing.set(pattern, [word]);
    }
  }
  return [...needing]
    .map(([pattern, found]) => ({ pattern, words: found }))
    .toSorted((a, b) => b.words.length - a.words.length);
}
