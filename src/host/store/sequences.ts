import england2013 from '../../../profiles/sequences/england-2013.json' with { type: 'json' };
import secondTide from '../../../profiles/sequences/second-tide.json' with { type: 'json' };
import steadySteps from '../../../profiles/sequences/steady-steps.json' with { type: 'json' };
import { parseSequence } from '../../analyze/index.ts';
import type { Sequence } from '../../analyze/types.ts';

let sequences: readonly Sequence[] | undefined;

/** The sequences that ship with the extension; read when first asked for, since the background starts often. */
export function starterSequences(): readonly Sequence[] {
  sequences ??= [steadySteps, secondTide, england2013].map(parseSequence);
  return sequences;
}
