import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readOwnSwaps } from './read-own-swaps.ts';

const own = readOwnSwaps();

test('a line has a word, its part of speech, swaps and sometimes cues', () => {
  expect(readOwnSwaps('# remark\nbank\tn\tside|shore\triver\n')).toEqual([
    { word: 'bank', part: 'n', swaps: ['side', 'shore'], marks: [0, 0], cues: ['river'] },
  ]);
  expect(() => readOwnSwaps('bank\tz\tside')).toThrow('line 1');
});

test('the list of our own swaps is sorted by word', () => {
  const words = own.map(({ word }) => word);
  expect(words).toEqual([...words].sort());
});

test('no word is its own swap, and no line has the same swap twice', () => {
  expect(own.filter(({ word, swaps }) => swaps.includes(word))).toEqual([]);
  expect(own.filter(({ swaps }) => new Set(swaps).size < swaps.length)).toEqual([]);
});

test('each word, part of speech and sense has only one line', () => {
  const keys = own.map(({ word, part, cues }) => `${word}/${part}/${cues.join(' ')}`);
  expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
});

test('the description of the vectors names their package, hash and licence', () => {
  const about = JSON.parse(readFileSync(new URL('vectors.json', import.meta.url), 'utf8'));
  expect(about.package).toMatch(/^[a-z0-9-]+@\d+\.\d+\.\d+$/);
  expect(about.sha256).toMatch(/^[0-9a-f]{64}$/);
  expect(about.licence).toContain('Public Domain');
});
