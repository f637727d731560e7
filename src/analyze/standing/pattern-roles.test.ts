import { expect, test } from 'vitest';
import { catalogue } from '../catalogue/catalogue.ts';
import { isOpenO, isShortO, isWeakVowel, lettersOfEnding, syllableCount } from './pattern-roles.ts';

/** The options of a group depend on these rows, so a change in the catalogue also needs a decision about this list. */
test.each([
  [
    isWeakVowel,
    'a_e-weak ar-weak i_e-weak or-weak schwa-a schwa-ai schwa-e schwa-i schwa-o schwa-ou schwa-u schwa-y u_e-weak weak-e',
  ],
  [isOpenO, 'o-aw'],
  [isShortO, 'short-o'],
])('the role %o selects the right catalogue rows', (role, ids) => {
  expect(
    catalogue
      .filter(role)
      .map(({ id }) => id)
      .sort()
      .join(' '),
  ).toBe(ids);
});

test('a row for a syllable count gives the number of syllables', () => {
  const counts = catalogue.map((row) => [row.id, syllableCount(row)]).filter(([, count]) => count !== null);
  expect(counts).toEqual([
    ['syllables-2', 2],
    ['syllables-3', 3],
  ]);
});

test('an ending that is also a word can be known by its letters', () => {
  const picked = catalogue.filter((row) => lettersOfEnding(row) !== null).map(({ id }) => id);
  expect(picked).toEqual(['suffix-teen']);
  for (const id of catalogue.flatMap((row) => lettersOfEnding(row) ?? []))
    expect(
      catalogue.some((row) => row.id === id),
      id,
    ).toBe(true);
});
