import { expect, test } from 'vitest';
import { parts } from '../../src/lesson/index.ts';
import { checkEveryStep, steps } from './check-sheet.ts';

test('at every step of every starter sequence pupils get only what they can read', {
  timeout: 240_000,
}, () => {
  const made = checkEveryStep(parts);
  for (const [id, blocks] of Object.entries(made))
    expect(blocks, id).toBeGreaterThan(id === 'read-it' ? steps.length : 2 * steps.length);
});
