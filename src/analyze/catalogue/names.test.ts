import { expect, test } from 'vitest';
import rows from './catalogue.json' with { type: 'json' };
import { patternNames } from './names.ts';

test('names.json has one name for every pattern of catalogue.json, in the same order', () => {
  expect(
    patternNames.map(({ id }) => id),
    'give names.json the rows of catalogue.json',
  ).toEqual(rows.map(({ id }) => id));
});

test('the word after “as in” in a label is the key word, and the key word is one of the examples', () => {
  for (const [i, { id, label, keyWord }] of patternNames.entries()) {
    const said = / as in ([\w-]+)$/.exec(label)?.[1];
    if (said) expect(said, id).toBe(keyWord);
    if (keyWord) expect(rows[i]!.examples, id).toContain(keyWord);
  }
});
