import { expect, test } from 'vitest';
import { readCmudict } from './read-cmudict.ts';

const words = readCmudict();

test('every pronunciation of a headword is kept in the listed order', () => {
  expect(words.get('a')).toEqual([['AH0'], ['EY1']]);
  expect(words.get('lead')?.map((phones) => phones.join(' '))).toEqual(['L EH1 D', 'L IY1 D']);
});

test('the comments of the package are dropped', () => {
  for (const readings of words.values()) {
    for (const phones of readings)
      for (const phone of phones) if (!/^[A-Z]{1,2}[012]?$/.test(phone)) expect(phone).toBe('a phone');
  }
  expect(words.get('aalborg')![0]!.join(' ')).toBe('AO1 L B AO0 R G');
});

test('headwords have no variant number', () => {
  expect([...words.keys()].filter((word) => word.includes('('))).toEqual([]);
});
