import { expect, test } from 'vitest';
import { addAdverbs } from './add-adverbs.ts';

const row = (word: string, part: 'a' | 'r', ...swaps: string[]) => ({
  word,
  part,
  swaps,
  marks: swaps.map(() => 0),
  cues: [],
});
const adverbs = new Set([
  'timidly',
  'shyly',
  'heartily',
  'warmly',
  'frantically',
  'wildly',
  'barely',
  'nakedly',
]);
const isAdverb = (word: string) => adverbs.has(word);

test('an adverb gets the swaps of its adjective, turned into adverbs', () => {
  const own = [row('timid', 'a', 'shy', 'afraid'), row('hearty', 'a', 'warm'), row('frantic', 'a', 'wild')];
  expect(addAdverbs(own, isAdverb).slice(3)).toEqual([
    row('timidly', 'r', 'shyly'),
    row('heartily', 'r', 'warmly'),
    row('frantically', 'r', 'wildly'),
  ]);
});

test('a listed adverb keeps its own swaps: barely does not become nakedly', () => {
  const own = [row('bare', 'a', 'naked'), row('barely', 'r', 'just')];
  expect(addAdverbs(own, isAdverb)).toEqual(own);
});
