import { expect, test } from 'vitest';
import rows from './catalogue.json' with { type: 'json' };
import { patternNames } from './names.ts';

test('every pattern has its name, in the same order', () => {
  expect(
    patternNames.map(({ id }) => id),
    'give names.json the rows of catalogue.json',
  ).toEqual(rows.map(({ id }) => id));
});
