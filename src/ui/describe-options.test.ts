import { expect, test } from 'vitest';
import { describeOptions } from './describe-options.ts';

test('every option is described, including the default ones', () => {
  expect(describeOptions({})).toEqual([
    'Schwa (the a in about): known once the full vowel is taught.',
    'Blends (st, mp) must be taught.',
    'Syllable types of longer words need not be taught.',
    'Ways to divide longer words need not be taught.',
    'Endings such as -ang and -el are known once their letters are.',
    'The wh of whale must be taught.',
    'Irregular forms of by-sight words must be taught (go, went).',
    'The o of dog counts as short o.',
    'Longest base word: as the steps teach.',
  ]);
});

test('each choice changes only its own sentence', () => {
  const usual = describeOptions({});
  const changed = [
    { schwa: 'strict' },
    { blends: 'free' },
    { syllableTypes: 'counted' },
    { divisions: 'counted' },
    { endings: 'units' },
    { wh: 'free' },
    { irregularForms: 'free' },
    { shortOMerged: false },
    { maxSyllables: 2 },
  ] as const;
  for (const [i, options] of changed.entries()) {
    const said = describeOptions(options);
    expect(said.flatMap((line, j) => (line === usual[j] ? [] : j))).toEqual([i]);
  }
  expect(describeOptions({ maxSyllables: 5 }).at(-1)).toBe('Longest base word: any number of syllables.');
});
