import { expect, test } from 'vitest';
import { wrongSpellings } from './wrong-spellings.ts';

const words = new Set(['hopping', 'hoping', 'taping', 'tapping']);
const wrong = (base: string, text: string, right: string) =>
  wrongSpellings(base, { text, kind: 'suffix', change: 'none' }, right, (word) => words.has(word));

test.each([
  ['hope', 'ing', 'hoping', ['hopeing']],
  ['run', 'ing', 'running', ['runing']],
  ['cry', 'ed', 'cried', ['cryed']],
  ['sail', 'ing', 'sailing', ['sailling']],
  // hoping is a word, but not the word wanted here.
  ['hop', 'ing', 'hopping', []],
  ['help', 'ful', 'helpful', []],
])('%s + %s gives the expected wrong spellings', (base, text, right, spellings) => {
  expect(wrong(base, text, right)).toEqual(spellings);
});
