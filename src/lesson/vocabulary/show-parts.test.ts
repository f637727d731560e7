import { expect, test } from 'vitest';
import { loadAnalyzer } from '../../../tests/load-analyzer.ts';
import { showParts } from './show-parts.ts';

const analyzer = loadAnalyzer();

test.each([
  ['sailor', 'sail + or'],
  ['baker', 'bake + er (e dropped)'],
  ['muddy', 'mud + y (last letter doubled)'],
  ['happiness', 'happy + ness (y changed to i)'],
  ['unkind', 'un + kind'],
  ['lighthouse', 'light + house'],
  ['quay', ''],
])('%s has the parts %j', (word, parts) => {
  expect(showParts(analyzer.analyze(word).readings[0]!)).toBe(parts);
});
