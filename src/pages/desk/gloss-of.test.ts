import { expect, test } from 'vitest';
import { glossOf } from './gloss-of.ts';

test('the gloss is the surest readable swap, else the surest swap, and empty when no swap is sure', () => {
  const huge = { text: 'huge', reads: false, score: 0.9 };
  const big = { text: 'big', reads: true, score: 0.6 };
  const fat = { text: 'fat', reads: true, score: 0.1 };
  expect(glossOf([huge, big, fat])).toBe('big');
  expect(glossOf([huge, fat])).toBe('huge');
  expect(glossOf([fat])).toBe('');
  expect(glossOf([])).toBe('');
});
