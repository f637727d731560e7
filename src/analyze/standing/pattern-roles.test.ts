import { expect, test } from 'vitest';
import { catalogue } from '../catalogue/catalogue.ts';
import { isInflection, isOpenO, isShortO, isWeakVowel, syllableCount } from './pattern-roles.ts';

/** The options of a group hang on these rows: a change in the catalogue has to be a decision here too. */
test.each([
  [
    isWeakVowel,
    'a_e-weak ar-weak i_e-weak or-weak schwa-a schwa-ai schwa-e schwa-i schwa-o schwa-ou schwa-u schwa-y u_e-weak weak-e',
  ],
  [isOpenO, 'o-aw'],
  [isShortO, 'short-o'],
])('%o picks the rows it is meant for', (role, ids) => {
  expect(
    catalogue
      .filter(role)
      .map(({ id }) => id)
      .sort()
      .join(' '),
  ).toBe(ids);
});

test('a syllable count row says how many', () => {
  const counts = catalogue.map((row) => [row.id, syllableCount(row)]).filter(([, count]) => count !== null);
  expect(counts).toEqual([
    ['syllables-2', 2],
    ['syllables-3', 3],
  ]);
});

test('endings, their changes and owners are inflection; short forms and beginnings are not', () => {
  const picked = catalogue.filter(isInflection).map(({ id }) => id);
  expect(picked).toEqual(
    expect.arrayContaining(['suffix-s', 'change-double', 'change-drop-e', 'change-y-to-i', 'possessive']),
  );
  expect(picked).not.toContain('contraction');
  expect(picked).not.toContain('prefix-un');
});
