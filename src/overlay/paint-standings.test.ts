import { expect, test } from 'vitest';
import { isMarked } from './paint-standings.ts';

test('names look to a page as readable words do, and so do by-sight and ignored words', () => {
  for (const standing of ['name', 'by-sight', 'skipped'] as const)
    expect(isMarked(standing), standing).toBe(isMarked('reads'));
  expect(isMarked('reads')).toBe(false);
  expect(isMarked('beyond')).toBe(true);
});
