import { describe, expect, test } from 'vitest';
import { listWritten, matchWords } from './match-words.ts';

const match = (read: string, written: string): (string | null)[] => {
  const words = written.split(' ');
  return matchWords(read.split(' '), words).map((place) => (place === null ? null : words[place]!));
};

describe('the words of a picture, looked up in its corrected text,', () => {
  test('are the same words while nothing was corrected', () => {
    expect(match('The ferry left', 'The ferry left')).toEqual(['The', 'ferry', 'left']);
  });
  test('are the corrected words', () => {
    expect(match('Tbe ferry lcft at ten', 'The ferry left at ten')).toEqual([
      'The',
      'ferry',
      'left',
      'at',
      'ten',
    ]);
  });
  test('are one word where a hyphen divided it at the end of a line', () => {
    expect(match('in the har- bour now', 'in the harbour now')).toEqual([
      'in',
      'the',
      'harbour',
      'harbour',
      'now',
    ]);
  });
  test('are gone where the teacher took them out, and added words belong to no picture', () => {
    expect(match('a big red ferry', 'a ferry')).toEqual(['a', null, null, 'ferry']);
    expect(match('a ferry', 'a big red ferry')).toEqual(['a', 'ferry']);
  });
});

test('the words of a text are told with their places', () => {
  expect(listWritten('# Fog\nat  sea')).toEqual([
    { start: 0, end: 1, text: '#' },
    { start: 2, end: 5, text: 'Fog' },
    { start: 6, end: 8, text: 'at' },
    { start: 10, end: 13, text: 'sea' },
  ]);
});
