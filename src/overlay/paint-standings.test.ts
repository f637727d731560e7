import { expect, test } from 'vitest';
import { isMarked } from './paint-standings.ts';

test('names, by-sight words and ignored words look the same to a page as readable words', () => {
  for (const standing of ['name', 'by-sight', 'skipped'] as const)
    expect(isMarked(standing), standing).toBe(isMarked('reads'));
  expect(isMarked('reads')).toBe(false);
  expect(isMarked('beyond')).toBe(true);
});
