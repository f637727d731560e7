import england2013 from '../../profiles/sequences/england-2013.json' with { type: 'json' };
import freshStart from '../../profiles/sequences/fresh-start.json' with { type: 'json' };
import steadySteps from '../../profiles/sequences/steady-steps.json' with { type: 'json' };
import { parseSequence } from '../analyze/index.ts';
import type { Sequence } from '../analyze/types.ts';

/** The sequences that ship with the extension. */
export const sequences: readonly Sequence[] = [steadySteps, freshStart, england2013].map(parseSequence);
