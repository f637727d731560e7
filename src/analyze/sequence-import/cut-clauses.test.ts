import { expect, test } from 'vitest';
import { cutClauses } from './cut-clauses.ts';

test.each([
  ['sh; ch • th', ['sh', 'ch', 'th']],
  ['sh (ship; shop); ch', ['sh (ship; shop)', 'ch']],
  ['sh (as in ship\nch; th', ['sh (as in ship', 'ch', 'th']],
  ['sh ... ch', ['sh', 'ch']],
  ['sh... ch', ['sh', 'ch']],
  ['sh (as in ship... shop) ch', ['sh (as in ship... shop) ch']],
  [' ; ', []],
])('%j is cut into the expected clauses', (text, clauses) => {
  expect(cutClauses(text, 'patterns').map((clause) => clause.text)).toEqual(clauses);
});

test('the name before a clause determines its kind', () => {
  const clauses = cutClauses('Phonics: sh, ch. Sight words: the', 'step');
  expect(clauses.map(({ kind }) => kind)).toEqual(['patterns', 'by-sight']);
  expect(new Set(cutClauses('VCe words: cake', 'patterns').map(({ kind }) => kind)).size).toBe(1);
});
