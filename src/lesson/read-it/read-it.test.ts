import { expect, test } from 'vitest';
import { wordsCorrectAMinute } from './read-it.ts';
import { setLines } from './set-lines.ts';

test('lines are short, contain every word once, and count the words up to their end', () => {
  const text =
    '# The net\nBram ran to the dock. It was six o’clock, and the lighthouse-keeper was late again.\n- a rope';
  const lines = setLines(text);
  expect(lines[0]).toEqual({ text: 'The net', words: null });
  expect(Math.max(...lines.map((line) => line.text.length))).toBeLessThanOrEqual(42);
  const said = lines
    .slice(1)
    .map((line) => line.text.trim())
    .join(' ');
  expect(said).toBe(
    'Bram ran to the dock. It was six o’clock, and the lighthouse-keeper was late again. a rope',
  );
  expect(lines.at(-1)!.words).toBe(17);
});

test('a passage without words gives no lines', () => {
  expect(setLines('\n - \n###\n"!"')).toEqual([]);
});

test.each([
  [100, 4, 60, 96],
  [73, 3, 90, 47],
  [50, 0, 30, 100],
  [10, 11, 60, null],
  [10, 0, 0, null],
  [Number.NaN, 0, 60, null],
])(
  '%d words with %d errors in %d seconds give the right number of words correct a minute',
  (words, errors, seconds, correct) => {
    expect(wordsCorrectAMinute(words, errors, seconds)).toBe(correct);
  },
);
