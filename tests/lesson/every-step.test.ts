import { expect, test } from 'vitest';
import { parts } from '../../src/lesson/index.ts';
import { checkEveryStep, moreParts, steps } from './check-sheet.ts';

/** How many blocks a part makes at a step, at least: a passage is readable at later steps alone, and a sheet has none before it. */
const FEWEST: Readonly<Record<string, number>> = { 'read-it': 0.25, 'spaced-review': -1 };

test('at every step of every starter sequence pupils get only what they can read', {
  timeout: 480_000,
}, () => {
  const made = checkEveryStep(parts);
  const half = new Set(moreParts.map(({ id }) => id));
  for (const [id, blocks] of Object.entries(made))
    expect(blocks, id).toBeGreaterThan((FEWEST[id] ?? (half.has(id) ? 0.25 : 0.5)) * steps.length);
});
