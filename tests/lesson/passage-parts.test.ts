import { expect, test } from 'vitest';
import { homophones } from '../../src/lesson/homophones/homophones.ts';
import { smoothReading } from '../../src/lesson/smooth-reading/smooth-reading.ts';
import { vocabulary } from '../../src/lesson/vocabulary/vocabulary.ts';
import { checkEveryStep, steps } from './check-sheet.ts';

test('at every step of every starter sequence pupils get only what they can read', {
  timeout: 240_000,
}, () => {
  const made = checkEveryStep([vocabulary, homophones, smoothReading]);
  for (const blocks of Object.values(made)) expect(blocks).toBeGreaterThan(2 * steps.length);
});
