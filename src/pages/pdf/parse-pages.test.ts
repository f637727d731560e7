import { expect, test } from 'vitest';
import { parsePages } from './parse-pages.ts';

test.each([
  ['', [1, 2, 3, 4, 5, 6]],
  ['2', [2]],
  ['1-3, 5', [1, 2, 3, 5]],
  ['5;1 – 2', [5, 1, 2]],
  ['4 - 9', [4, 5, 6]],
])('"%s" selects pages of a file with six pages', (written, pages) => {
  expect([...(parsePages(written, 6) ?? [])]).toEqual(pages);
});

test.each(['0', '7', '3-1', 'two', '1-', '-', '1--2'])(
  '"%s" is refused for a file with six pages',
  (written) => {
    expect(parsePages(written, 6)).toBeNull();
  },
);
