import { expect, test } from 'vitest';
import type { Reading } from '../../analyze/types.ts';
import { markPrintWord } from './mark-print-word.ts';

const reading = (vowel: string, split: readonly string[]): Reading => ({
  pronunciation: '',
  source: 'dictionary',
  units: [
    { letters: 'r', sound: 'R', pattern: 'r' },
    { letters: 'u', sound: vowel, pattern: 'u' },
    { letters: 'nn', sound: 'N', pattern: 'nn' },
    { letters: 'i', sound: 'IH', pattern: 'i', affix: 'suffix' },
    { letters: 'ng', sound: 'NG', pattern: 'ng', affix: 'suffix' },
  ],
  base: null,
  affixes: [],
  syllables: split.map((text) => ({ text, type: 'closed' as const })),
  requires: [],
});
const running = reading('AH', ['run', 'ning']);
const both = { dots: true, vowels: true };

test('a word can have dots, vowel marks, both or neither', () => {
  expect(markPrintWord('Running', [running], both)).toBe('Rŭn·nĭng');
  expect(markPrintWord('Running', [running], { dots: true, vowels: false })).toBe('Run·ning');
  expect(markPrintWord('Running', [running], { dots: false, vowels: true })).toBe('Rŭnnĭng');
  expect(markPrintWord('Running', [running], { dots: false, vowels: false })).toBe('Running');
});

test('a word whose readings have different marks is printed without those marks', () => {
  const other = reading('UW', ['run', 'ning']);
  expect(markPrintWord('running', [running, other], both)).toBe('running');
  expect(markPrintWord('running', [running, other], { dots: true, vowels: false })).toBe('run·ning');
});

test('a word with accents of its own stays unchanged, and so does a word without a reading', () => {
  expect(markPrintWord('Māori', [running], { dots: true, vowels: false })).toBe('Māori');
  expect(markPrintWord('running', [], both)).toBe('running');
});

test('the word “a” is weak in a sentence and stays unmarked, but the word “I” is marked', () => {
  const named = (letters: string, sound: string): Reading => ({
    ...running,
    units: [{ letters, sound, pattern: letters }],
    syllables: [{ text: letters, type: 'open' }],
  });
  expect(markPrintWord('A', [named('a', 'EY')], both)).toBe('A');
  expect(markPrintWord('I', [named('i', 'AY')], both)).toBe('Ī');
});
