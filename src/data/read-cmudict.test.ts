import { expect, test } from 'vitest';
import { readCmudict } from './read-cmudict.ts';

const words = readCmudict();

test('keeps every pronunciation of a headword in the order listed', () => {
  expect(words.get('a')).toEqual([['AH0'], ['EY1']]);
  expect(words.get('lead')?.map((phones) => phones.join(' '))).toEqual(['L EH1 D', 'L IY1 D']);
});

test('drops the remarks of the package', () => {
  for (const readings of words.values()) {
    for (const phones of readings)
      for (const phone of phones) if (!/^[A-Z]{1,2}[012]?$/.test(phone)) expect(phone).toBe('a phone');
  }
  expect(words.get('aalborg')![0]!.join(' ')).toBe('AO1 L B AO0 R G');
});

test('headwords carry no variant number', () => {
  expect([...words.keys()].filter((word) => word.includes('('))).toEqual([]);
});
