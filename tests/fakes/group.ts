import type { Group } from '../../src/analyze/types.ts';

/** Returns a group without a sequence, with the given fields and nothing else. */
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
