import { expect, test } from 'vitest';
import { createFeatureNumbers, type Feature, writeFeature, writeWeights } from './feature-weights.ts';

const features: readonly (readonly [written: string, feature: Feature])[] = [
  ['-1=the', ['-1=', 'the']],
  ['-1=', ['-1=', '']],
  ['-1-', ['-1-', '']],
  ['+1-ed', ['+1-', 'ed']],
  ['ab=article is', ['ab=', 'article', 'is']],
  ['vv= ', ['vv=', '', '']],
  ['cob=, of N mark', ['cob=', ',', 'of', 'N', 'mark']],
  ['capital', ['capital', '']],
  ['capital first', ['capital first', '']],
  ['~storm', ['~', 'storm']],
  ['~:topic 1', ['~', ':topic', '1']],
  ['~:no past', ['~', ':no', 'past']],
];

test.each(features)('%j is a feature by its values', (written, feature) => {
  const numbers = createFeatureNumbers();
  const weights = numbers.read(writeWeights([[written, -4]]));
  expect(writeFeature(feature)).toBe(written);
  expect(weights.get(numbers.find(feature)!)).toBe(-4);
});

test('lists share the number of a feature, and a feature without a weight has none', () => {
  const numbers = createFeatureNumbers();
  const [one, other] = [numbers.read('a21=n to 3|a1=to -1'), numbers.read('a21=n to 7')];
  const number = numbers.find(['a21=', 'n', 'to'])!;
  expect([one.get(number), other.get(number)]).toEqual([3, 7]);
  expect(other.get(numbers.find(['a1=', 'to'])!)).toBeUndefined();
  for (const unknown of [
    ['a21=', 'n'],
    ['a21=', 'to', 'n'],
    ['s=', 'to'],
  ] as const)
    expect(numbers.find([...unknown])).toBeUndefined();
  expect(numbers.read('').size).toBe(0);
});
