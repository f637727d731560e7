import type { PatternId } from '../analyze/types.ts';
import { patternLabel } from '../marks/pattern-label.ts';

/** What patterns are called (`ai as in rain; final le`), in English whatever language is around it. */
export function PatternNames({ patterns }: { readonly patterns: readonly PatternId[] }) {
  return <span lang="en">{patterns.map(patternLabel).join('; ')}</span>;
}
