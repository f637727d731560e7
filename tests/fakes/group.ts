import type { Group } from '../../src/analyze/types.ts';

/** A group without a sequence that knows what the test says, and nothing else. */
export function groupOf(given: Partial<Group>): Group {
  return {
    name: 'Herons',
    sequence: null,
    step: 0,
    alsoTaught: [],
    notYet: [],
    bySight: [],
    names: [],
    options: {},
    ...given,
  };
}
