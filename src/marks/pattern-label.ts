import { patternNames } from '../analyze/index.ts';
import type { Pattern, PatternId } from '../analyze/types.ts';

const patterns: ReadonlyMap<PatternId, Pick<Pattern, 'label' | 'keyWord'>> = new Map(
  patternNames.map((pattern) => [pattern.id, pattern]),
);

/** The name of a pattern among teachers (`ai as in rain`); its id where this version does not know it. */
export function patternLabel(id: PatternId): string {
  return patterns.get(id)?.label ?? id;
}

/** The key word of a pattern (`rain`); empty where this version does not know the pattern. */
export function keyWord(id: PatternId): string {
  return patterns.get(id)?.keyWord ?? '';
}
