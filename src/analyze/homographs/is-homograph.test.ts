import { expect, test } from 'vitest';
import { HOMOGRAPHS, isHomograph } from './is-homograph.ts';
import { readingRules } from './settle-by-rule.ts';
import weights from './weights.json' with { type: 'json' };

test('HOMOGRAPHS lists exactly the words that have rules or weights', () => {
  const known = new Set([...Object.keys(weights.words), ...readingRules().byWord.keys()]);
  expect([...HOMOGRAPHS].sort(), 'put what is missing into HOMOGRAPHS').toEqual([...known].sort());
});

test.each([
  ['read', true],
  ['Read', true],
  ['records', true],
  ['red', false],
  ['', false],
])('isHomograph of %j is %s', (word, expected) => {
  expect(isHomograph(word)).toBe(expected);
});
