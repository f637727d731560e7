import { expect, test } from 'vitest';
import { parts } from '../../src/lesson/index.ts';
import { checkEveryStep, moreParts, steps } from './check-sheet.ts';

/**
 * The smallest average number of blocks that a part makes for a step. The part `read-it` makes few blocks, since a
 * passage is readable only at later steps. The part `spaced-review` may make none, since the tests have no earlier
 * sheets to review.
 */
const FEWEST: Readonly<Record<string, number>> = { 'read-it': 0.25, 'spaced-review': -1 };

test('pupils get only readable text at every step of every starter sequence', {
  timeout: 480_000,
}, () => {
  const made = checkEveryStep(parts);
  const half = new Set(moreParts.map(({ id }) => id));
  for (const [id, blocks] of Object.entries(made))
    expect(blocks, id).toBeGreaterThan((FEWEST[id] ?? (half.has(id) ? 0.25 : 0.5)) * steps.length);
});
