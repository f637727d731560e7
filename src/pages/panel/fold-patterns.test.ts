import { expect, test } from 'vitest';
import type { Gap } from '../../analyze/types.ts';
import { foldPatterns } from './fold-patterns.ts';

const gap = (pattern: string, opens: number): Gap => ({ pattern, opens, words: [] });
const steps: Record<string, number> = { ai: 12, ee: 12, oa: 14, igh: 16, ph: 40 };
const stepOf = (id: string): number | null => steps[id] ?? null;
const names = (gaps: readonly Gap[]): string[] => gaps.map(({ pattern }) => pattern);

test('patterns of the next five steps come first, in teaching order', () => {
  const gaps = [gap('igh', 9), gap('ph', 5), gap('oa', 4), gap('kn', 3), gap('ee', 2), gap('ai', 1)];
  const { next, later, never } = foldPatterns(gaps, stepOf, 10);
  expect(names(next)).toEqual(['ee', 'ai', 'oa']);
  expect(names(later)).toEqual(['igh', 'ph']);
  expect(names(never)).toEqual(['kn']);
});

test('a pattern of a step that the group has passed is among the next patterns', () => {
  expect(names(foldPatterns([gap('ph', 1), gap('ai', 1)], stepOf, 39).next)).toEqual(['ai', 'ph']);
});
