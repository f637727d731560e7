import { describe, expect, test } from 'vitest';
import { listWritten, matchWords } from './match-words.ts';

const match = (read: string, written: string): (string | null)[] => {
  const words = written.split(' ');
  return matchWords(read.split(' '), words).map((place) => (place === null ? null : words[place]!));
};

describe('matching the words of a picture with its corrected text', () => {
  test('keeps the same words when nothing was corrected', () => {
    expect(match('The ferry left', 'The ferry left')).toEqual(['The', 'ferry', 'left']);
  });
  test('gives the corrected words', () => {
    expect(match('Tbe ferry lcft at ten', 'The ferry left at ten')).toEqual([
      'The',
      'ferry',
      'left',
      'at',
      'ten',
    ]);
  });
  test('gives one word for both parts of a word hyphenated at the end of a line', () => {
    expect(match('in the har- bour now', 'in the harbour now')).toEqual([
      'in',
      'the',
      'harbour',
      'harbour',
      'now',
    ]);
  });
  test('gives no word for a removed word, and matches an added word with no word of the picture', () => {
    expect(match('a big red ferry', 'a ferry')).toEqual(['a', null, null, 'ferry']);
    expect(match('a ferry', 'a big red ferry')).toEqual(['a', 'ferry']);
  });
});

test('the words of a text are listed with their offsets', () => {
  expect(listWritten('# Fog\nat  sea')).toEqual([
    { start: 0, end: 1, text: '#' },
    { start: 2, end: 5, text: 'Fog' },
    { start: 6, end: 8, text: 'at' },
    { start: 10, end: 13, text: 'sea' },
  ]);
});
