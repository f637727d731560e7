import type { PatternId } from '../analyze/types.ts';
import { patternName } from '../ui/pattern-name.ts';

/** What patterns are called, in the reader's language: `ai as in rain; suffix -ing`. */
export function PatternNames({ patterns }: { readonly patterns: readonly PatternId[] }) {
  return <span>{patterns.map(patternName).join('; ')}</span>;
}
