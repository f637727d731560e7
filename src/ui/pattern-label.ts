import { catalogue } from '../analyze/index.ts';
import type { PatternId } from '../analyze/types.ts';

const labels = new Map(catalogue.map(({ id, label }) => [id, label]));

/** What a teacher calls a pattern (`ai as in rain`); its id where this version does not know it. */
export function patternLabel(id: PatternId): string {
  return labels.get(id) ?? id;
}
