import type { Sequence } from '../analyze/types.ts';
import { patternLabel } from '../marks/pattern-label.ts';

/** What a step of a sequence is called: its title, else what it teaches. 0 is before the first. */
export function stepTitle(sequence: Sequence, step: number): string {
  const found = sequence.steps[step - 1];
  if (!found) return 'Before the first step';
  const { title, teaches, bySight } = found;
  if (title) return title;
  if (teaches.length > 0) return teaches.map(patternLabel).join('; ');
  return bySight.length > 0 ? `by sight: ${bySight.join(', ')}` : 'Nothing new';
}
