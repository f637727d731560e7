import { expect, test } from 'vitest';
import { readCapitalised, readFrequency } from './read-frequency.ts';

const rank = readFrequency();

test('the commonest word has rank 1, and every rank is used once', () => {
  expect(rank.get('you')).toBe(1);
  expect(new Set(rank.values()).size).toBe(rank.size);
  expect(Math.max(...rank.values())).toBe(rank.size);
});

test('counts of a word with a capital are added to the word in lower case', () => {
  expect(rank.get('i')).toBe(2);
  expect(rank.has('I')).toBe(false);
});

test('a name is mostly written with a capital, and an ordinary word is not', () => {
  const capitalised = readCapitalised();
  expect(capitalised.has('john')).toBe(true);
  expect(capitalised.has('corner')).toBe(false);
});
