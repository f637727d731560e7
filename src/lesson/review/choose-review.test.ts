import { expect, test } from 'vitest';
import type { Pattern } from '../../analyze/types.ts';
import type { LessonInput } from '../lesson-input.ts';
import { createPicker } from '../picker.ts';
import { chooseReview } from './choose-review.ts';

const known = { words: [], knows: () => true } as unknown as LessonInput['known'];
const review = (days: Record<string, number>, count: number, seed: number, focus: string[] = []): Pattern[] =>
  chooseReview(
    { focus, known },
    { days: new Map(Object.entries(days)), estimated: false },
    count,
    createPicker(seed),
  );
const seeds = Array.from({ length: 60 }, (_, seed) => seed);

test('recently taught letters come often, and older letters come now and then', () => {
  const days = { sh: 1, ch: 1, th: 1, m: 200, p: 200, t: 200 };
  const drawn = seeds.flatMap((seed) => review(days, 2, seed)).map(({ id }) => id);
  const times = (...ids: string[]): number => drawn.filter((id) => ids.includes(id)).length;
  expect(times('sh', 'ch')).toBeGreaterThan(10 * times('m', 'p'));
  expect(review(days, 6, 1)).toHaveLength(6);
});

test('at most a third of the letters are today’s', () => {
  const days = { ai: 0, ay: 0, a_e: 0, m: 9, p: 9, t: 9, d: 9 };
  const ids = review(days, 6, 1, ['ai', 'ay', 'a_e']).map(({ id }) => id);
  expect(ids.filter((id) => /^a/.test(id))).toHaveLength(2);
});

test('spellings of one sound are side by side only where nothing else is left', () => {
  for (const seed of seeds) {
    const ids = review({ ai: 3, ay: 3, m: 3, p: 3, t: 3 }, 5, seed).map(({ id }) => id);
    expect(ids.slice(0, 4).join(' ')).not.toMatch(/ai ay|ay ai/);
  }
});
