import { expect, test } from 'vitest';
import { numberLines } from './number-lines.ts';

const blocks = [
  { text: 'Bram has a net. It is big.', starts: [0, 16] },
  { text: '', starts: [] },
  { text: 'The tide is in.', starts: [0] },
];

test.each([
  ['none', [[null, null], [], [null]]],
  ['numbers', [[1, 2], [], [3]]],
  ['counts', [[4, 7], [], [11]]],
] as const)(
  'with the margin %s, numbers continue from block to block, even past a block without lines',
  (margin, numbers) => {
    expect(numberLines(blocks, margin)).toEqual(numbers);
  },
);
