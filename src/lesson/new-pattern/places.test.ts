import { describe, expect, test } from 'vitest';
import type { Pattern, Reading, WordAnalysis } from '../../analyze/types.ts';
import { placesOf } from './places.ts';

/** Makes a base word from spellings. The spelling that a test asks about is in capitals, and a slash divides syllables. */
function reading(word: string, affixes = 0): Reading {
  const units = word.replaceAll('/', ' ').split(/\s+/);
  return {
    units: units.map((letters) => ({ letters, pattern: letters === letters.toUpperCase() ? 'ai' : letters })),
    syllables: word.split('/'),
    affixes: Array.from({ length: affixes }),
  } as unknown as Reading;
}
const listed = (...words: Reading[]) => words.map((one) => ({ readings: [one] }) as unknown as WordAnalysis);
const pattern = { id: 'ai', where: '', family: 'vowel team' } as Pattern;
const many = (count: number, word: string): Reading[] => Array.from({ length: count }, () => reading(word));

describe('a spelling is', () => {
  test.each<[string, Reading[], string]>([
    ['in the middle', many(9, 'r AI n'), 'in the middle of a word'],
    ['in two places', [...many(5, 'r AI n'), ...many(5, 'r AI')], 'in the middle or at the end of a word'],
    [
      'in all places',
      [reading('AI d'), reading('r AI n'), reading('r AI')],
      'at the start, in the middle or at the end of a word',
    ],
    [
      'not in a place that one word of thirteen has',
      [...many(12, 'r AI n'), reading('AI d')],
      'in the middle of a word',
    ],
    [
      'in a place that one word of twelve has',
      [...many(11, 'r AI n'), reading('AI d')],
      'at the start or in the middle of a word',
    ],
    [
      'where short words have it, if they are five',
      [...many(5, 'r AI'), ...many(20, 'r AI/n')],
      'at the end of a word',
    ],
    [
      'where all words have it, if short ones are four',
      [...many(4, 'r AI'), ...many(96, 'r AI/n')],
      'in the middle of a word',
    ],
    [
      'not where words with an ending have it',
      [...many(5, 'r AI n'), reading('AI d', 1)],
      'in the middle of a word',
    ],
  ])('%s', (_where, words, says) => expect(placesOf(pattern, listed(...words))).toBe(says));

  test('in a rare place too if a word that is shown has it there', () => {
    const words = listed(...many(20, 'r AI n'));
    expect(placesOf(pattern, words, [reading('r AI'), reading('s n ow')])).toBe(
      'in the middle or at the end of a word',
    );
    expect(placesOf(pattern, words, [reading('s n ow')])).toBe('in the middle of a word');
  });

  test('where the catalogue says, and an affix is at its own end of a base word', () => {
    expect(placesOf({ ...pattern, where: 'at the end of a word' }, [])).toBe('at the end of a word');
    expect(placesOf({ ...pattern, family: 'suffix' }, [])).toBe('at the end of a base word');
    expect(placesOf({ ...pattern, family: 'prefix' }, [])).toBe('at the start of a base word');
    expect(placesOf({ ...pattern, family: 'vowel-consonant-e' }, [])).toBe(
      'before one consonant and a silent e',
    );
  });

  test('nowhere if no word has it', () => expect(placesOf(pattern, listed(reading('c a t')))).toBe(''));
});
