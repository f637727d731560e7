import { expect, test } from 'vitest';
import { createCsvWriter } from './write-csv.ts';

/** Characters that a spreadsheet reads as the start of a formula: OWASP, CSV Injection (from memory). */
test.each<[title: string, cell: string]>([
  ['=1+2', "'=1+2"],
  ['+1', "'+1"],
  ['-1', "'-1"],
  ['@SUM(A1)', "'@SUM(A1)"],
  ['\t=1', "'\t=1"],
  ['a=b', 'a=b'],
  ['fog, wind', '"fog, wind"'],
  ['=“a”,"b"', '"\'=“a”,""b"""'],
  ['two\nlines', '"two\nlines"'],
])('the title %j gives a safe cell', (title, cell) => {
  const tally = {
    running: 0,
    reads: 0,
    fresh: 0,
    bySight: 0,
    names: 0,
    unsure: 0,
    beyond: 0,
    skipped: 0,
    reach: 100,
  };
  const report = { group: 'G', sequence: null, step: 0, tally, reaches95: null, reaches99: 0, gaps: [] };
  expect(createCsvWriter().row({ text: 'a', title, reports: [report] })).toBe(
    `a,${cell},G,,0,0,0,100,0,0,0,0,0,0,0,,0,,\r\n`,
  );
});
