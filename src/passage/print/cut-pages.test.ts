import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutPages, type PageRow } from './cut-pages.ts';

/** Returns rows of these heights, one below the other. A negative height stands for a row that holds the next row. */
function stack(...heights: readonly number[]): PageRow[] {
  let top = 0;
  return heights.map((height) => {
    const row = { top, bottom: top + Math.abs(height), holdsNext: height < 0 };
    top = row.bottom;
    return row;
  });
}

describe('cutting rows into pages', () => {
  test('a row without room on the page begins the next page', () => {
    expect(cutPages(stack(10, 10, 10, 10), 20)).toEqual([0, 2]);
    expect(cutPages(stack(10, 10, 10, 10), 19)).toEqual([0, 1, 2, 3]);
    expect(cutPages([], 20)).toEqual([]);
  });

  test('a heading moves to the next page with its text, and two lines of a paragraph stay together', () => {
    expect(cutPages(stack(10, 10, -10, -10, 10), 30)).toEqual([0, 2]);
    expect(cutPages(stack(10, 10, 10, -10, 10), 40)).toEqual([0, 3]);
  });

  test('rows are cut even if all have to stay together or one is higher than a page', () => {
    expect(cutPages(stack(-10, -10, -10, -10), 20)).toEqual([0, 2]);
    expect(cutPages(stack(10, 50, 10), 20)).toEqual([0, 1, 2]);
  });

  test('each row is on one page, and only a page with a single row is higher than its room', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -30, max: 30 }), { minLength: 1 }),
        fc.integer({ min: 1, max: 90 }),
        (heights, room) => {
          const rows = stack(...heights);
          const starts = cutPages(rows, room);
          expect(starts[0]).toBe(0);
          expect(starts).toEqual([...new Set(starts)].sort((a, b) => a - b));
          for (const [i, start] of starts.entries()) {
            const end = starts[i + 1] ?? rows.length;
            const height = rows[end - 1]!.bottom - rows[start]!.top;
            expect(end - start === 1 || height <= room).toBe(true);
          }
        },
      ),
      { seed: 20261125, numRuns: 500 },
    );
  });
});
