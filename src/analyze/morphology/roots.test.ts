import { expect, test } from 'vitest';
import { findRoots } from './roots.ts';

test.each([
  ['inspect', 'in spect', 'root-spect'],
  ['construct', 'con struct', 'prefix-con root-struct'],
  ['structure', 'struct ure', 'root-struct'],
  ['microphone', 'micro phone', 'root-micro root-phone'],
  ['photograph', 'photo graph', 'root-graph root-photo'],
  ['transport', 'trans port', 'root-port'],
  ['perform', 'per form', 'prefix-per root-form'],
  ['unicorn', 'uni corn', 'prefix-uni'],
  ['admit', 'ad mit', 'prefix-ad'],
])('findRoots divides %s into %s, with the rows %s', (word, parts, rows) => {
  const found = findRoots(word);
  expect(found?.parts.join(' ')).toBe(parts);
  expect(found?.rows.toSorted().join(' ')).toBe(rows);
});

test.each([
  'port',
  'portion',
  'portrait',
  'former',
  'comet',
  'cone',
  'example',
  'person',
  'proper',
  'adult',
  'uncle',
  'symptom',
  'harbor',
])('%s has none of the listed roots', (word) => {
  expect(findRoots(word)).toBeNull();
});
