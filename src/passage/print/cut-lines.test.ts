import { expect, test } from 'vitest';
import { countByLine, cutLines } from './cut-lines.ts';
import { textOfRuns } from './make-sheet.ts';

const runs = [
  { text: 'Otto’s well-', fresh: false },
  { text: 'kept', fresh: true },
  { text: ' boat — a ketch — had 40 nets.', fresh: false },
];

test('lines keep their runs, and lose the space at their ends', () => {
  const lines = cutLines(runs, [0, 12, 26]);
  expect(lines.map(textOfRuns)).toEqual(['Otto’s well-', 'kept boat — a', 'ketch — had 40 nets.']);
  expect(lines[1]!.map(({ fresh }) => fresh)).toEqual([true, false]);
});

test('words are counted by the line they begin in', () => {
  expect(countByLine(textOfRuns(runs), [0, 12, 26])).toEqual([2, 4, 8]);
  expect(countByLine('“Go!” – he said—then… 3.5', [0])).toEqual([5]);
  expect(countByLine('abcdefgh ij', [0, 4])).toEqual([1, 2]);
  expect(countByLine('', [0])).toEqual([0]);
});
