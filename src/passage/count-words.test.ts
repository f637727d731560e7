import { expect, test } from 'vitest';
import { countWords } from './count-words.ts';
import { cutLine } from './cut-line.ts';

test('words and skipped tokens are counted over all lines', () => {
  const { words, skipped } = countWords('# The 9:15 ferry\n\nThe ferry had 12 nets.\nIt left.', cutLine);
  expect(Object.fromEntries(words)).toEqual({ the: 2, ferry: 2, had: 1, nets: 1, it: 1, left: 1 });
  expect(skipped).toBe(2);
});
