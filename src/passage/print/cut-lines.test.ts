import { expect, test } from 'vitest';
import { countByLine, cutLines } from './cut-lines.ts';
import { textOfRuns } from './make-sheet.ts';

const runs = [
  { text: 'Otto’s well-', fresh: false },
  { text: 'kept', fresh: true },
  { text: ' boat — a ketch — had 40 nets.', fresh: false },
];

test('cut lines keep their runs and lose the spaces at their ends', () => {
  const lines = cutLines(runs, [0, 12, 26]);
  expect(lines.map(textOfRuns)).toEqual(['Otto’s well-', 'kept boat — a', 'ketch — had 40 nets.']);
  expect(lines[1]!.map(({ fresh }) => fresh)).toEqual([true, false]);
});

test('a word is counted in the line in which it begins', () => {
  expect(countByLine(textOfRuns(runs), [0, 12, 26])).toEqual([2, 4, 8]);
  expect(countByLine('“Go!” – he said—then… 3.5', [0])).toEqual([5]);
  expect(countByLine('abcdefgh ij', [0, 4])).toEqual([1, 2]);
  expect(countByLine('', [0])).toEqual([0]);
});
