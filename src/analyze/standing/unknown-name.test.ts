import { expect, test } from 'vitest';
import { nearestName } from './unknown-name.ts';

test.each([
  ['ai-long', ['oa', 'ai', 'ai-long-a', 'ai-short-e'], 'ai-long-a'],
  ['bysight', ['names', 'bySight'], 'bySight'],
  ['shcwa', ['blends', 'schwa'], 'schwa'],
  ['zzzzzzzz', ['schwa', 'blends'], null],
  ['', ['schwa'], null],
  ['ab', ['ba', 'ac'], 'ac'],
])('nearestName finds the right name for %s among %j', (typed, names, nearest) => {
  expect(nearestName(typed, names)).toBe(nearest);
});

test('a very long name is compared by its beginning only', () => {
  expect(nearestName('x'.repeat(1_000_000), ['schwa'])).toBeNull();
});
