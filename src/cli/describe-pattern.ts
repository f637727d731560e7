import { catalogue } from '../analyze/index.ts';
import type { PatternId } from '../analyze/types.ts';

const labels: ReadonlyMap<PatternId, string> = new Map(catalogue.map(({ id, label }) => [id, label]));

/** Returns the name that teachers use for a pattern: ai as in rain. */
export function describePattern(id: PatternId): string {
  return labels.get(id) ?? id;
}
