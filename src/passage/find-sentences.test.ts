import { expect, test } from 'vitest';
import { findLongSentences } from './find-sentences.ts';

test('sentences with more words than the limit are found with their exact start and end', () => {
  const line = 'The tide came in. The gulls’ cries rose over the wet rocks! Otto ran.';
  const found = findLongSentences(line, 7);
  expect(found.map(({ start, end }) => line.slice(start, end))).toEqual([
    'The gulls’ cries rose over the wet rocks!',
  ]);
  expect(findLongSentences(line, 8)).toEqual([]);
  expect(findLongSentences('', 0)).toEqual([]);
});
