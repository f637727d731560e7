import { expect, test } from 'vitest';
import rows from './catalogue.json' with { type: 'json' };
import { patternNames } from './names.ts';

test('every pattern has its name, in the same order', () => {
  expect(
    patternNames.map(({ id }) => id),
    'give names.json the rows of catalogue.json',
  ).toEqual(rows.map(({ id }) => id));
});

test('a label names the key word, and the key word is one of the examples', () => {
  for (const [i, { id, label, keyWord }] of patternNames.entries()) {
    const said = / as in ([\w-]+)$/.exec(label)?.[1];
    if (said) expect(said, id).toBe(keyWord);
    if (keyWord) expect(rows[i]!.examples, id).toContain(keyWord);
  }
});
