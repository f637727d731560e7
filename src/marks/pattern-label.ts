import { patternNames } from '../analyze/index.ts';
import type { Pattern, PatternId } from '../analyze/types.ts';

const patterns: ReadonlyMap<PatternId, Pick<Pattern, 'label' | 'keyWord'>> = new Map(
  patternNames.map((pattern) => [pattern.id, pattern]),
);

/**
 * Returns the name that teachers use for a pattern (`ai as in rain`). Returns the id if this version does not know the
 * pattern.
 */
export function patternLabel(id: PatternId): string {
  return patterns.get(id)?.label ?? id;
}

/** Returns the key word of a pattern (`rain`). Returns an empty text if this version does not know the pattern. */
export function keyWord(id: PatternId): string {
  return patterns.get(id)?.keyWord ?? '';
}
