import type { Sequence } from '../analyze/types.ts';
import { say } from '../wording/say.ts';
import { patternNames } from './pattern-names.ts';

/** What a step of a sequence is called: its title, else what it teaches. 0 is before the first. */
export function stepTitle({ steps }: Pick<Sequence, 'steps'>, step: number): string {
  const found = steps[step - 1];
  if (!found) return say('ui.beforeFirst');
  const { title, teaches, bySight } = found;
  if (title) return title;
  if (teaches.length > 0) return patternNames(teaches);
  return bySight.length > 0 ? say('ui.bySightWords', { words: bySight.join(', ') }) : say('ui.nothingNew');
}
