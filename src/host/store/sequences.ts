import england2013 from '../../../profiles/sequences/england-2013.json' with { type: 'json' };
import secondTide from '../../../profiles/sequences/second-tide.json' with { type: 'json' };
import steadySteps from '../../../profiles/sequences/steady-steps.json' with { type: 'json' };
import { parseSequence } from '../../analyze/index.ts';
import type { Sequence } from '../../analyze/types.ts';

const files = [steadySteps, secondTide, england2013];
const read = new Map<string, Sequence>();

/** The sequences that ship with the extension. */
export function starterSequences(): readonly Sequence[] {
  return files.map(({ id }) => starterSequence(id)!);
}

/**
 * Returns the starter sequence with this id, or null for any other id. Each sequence is parsed when it is first asked
 * for, since the background starts often and needs only one.
 */
export function starterSequence(id: string): Sequence | null {
  const file = files.find((one) => one.id === id);
  if (!file) return null;
  const known = read.get(id) ?? parseSequence(file);
  read.set(id, known);
  return known;
}
