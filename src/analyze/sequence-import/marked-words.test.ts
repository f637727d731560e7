import { expect, test } from 'vitest';
import { importSequence } from './import-sequence.ts';

test('brackets with common words on several lines are lists of by-sight words', () => {
  const pasted = ['sh; [they, have]', 'ch; [was, ready]', 'th; [of, said]', 'wh; [what, you]']
    .map((line, i) => `Week ${i + 1}: ${line}`)
    .join('\n');
  const words = importSequence(pasted).steps.map(({ items }) => items.flatMap(({ bySight }) => bySight));
  expect(words[1]).toEqual(['was', 'ready']);
});

test('examples in brackets are not by-sight words', () => {
  const pasted = ['sh [ship, dish]', 'ch [chip, rich]', 'th [thin, bath]', 'wh [when, whip]']
    .map((line, i) => `Week ${i + 1}: ${line}`)
    .join('\n');
  expect(
    importSequence(pasted).steps.flatMap(({ items }) => items.flatMap(({ bySight }) => bySight)),
  ).toEqual([]);
});
