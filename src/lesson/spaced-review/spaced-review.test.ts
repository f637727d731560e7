import { expect, test } from 'vitest';
import { addSheet, parseSheets } from './earlier-sheets.ts';
import { findDue } from './find-due.ts';

const on = (...days: string[]) => days.map((day) => ({ day, items: ['rain'] }));

test.each([
  [['2026-11-01'], '2026-11-01', false],
  [['2026-11-01'], '2026-11-02', true],
  [['2026-11-01', '2026-11-02'], '2026-11-04', false],
  [['2026-11-01', '2026-11-02'], '2026-11-05', true],
  [['2026-11-01', '2026-11-02', '2026-11-05'], '2026-11-11', false],
  [['2026-11-01', '2026-11-02', '2026-11-05'], '2026-11-12', true],
  [['2026-11-01', '2026-11-02', '2026-11-05', '2026-11-12', '2026-11-26'], '2026-12-25', false],
  [['2026-11-01', '2026-11-02', '2026-11-05', '2026-11-12', '2026-11-26'], '2026-12-26', true],
])('a word met on %s is due on %s: %s', (days, day, isDue) => {
  expect(findDue(on(...days), day).map(({ item }) => item)).toEqual(isDue ? ['rain'] : []);
});

test('the word that is most overdue for its interval comes first', () => {
  const sheets = [
    { day: '2026-11-01', items: ['boat'] },
    { day: '2026-11-09', items: ['rain'] },
  ];
  expect(findDue(sheets, '2026-11-11').map(({ item }) => item)).toEqual(['boat', 'rain']);
});

test('the sheets of a day are stored as one, and the oldest sheets are removed', () => {
  const sheet = (day: string, word: string) => ({ day, patterns: ['ai'], words: [word], bySight: [] });
  const two = addSheet(addSheet([], sheet('2026-11-02', 'rain')), sheet('2026-11-02', 'sail'));
  expect(two).toEqual([{ day: '2026-11-02', patterns: ['ai'], words: ['rain', 'sail'], bySight: [] }]);
  let many = two;
  for (let i = 0; i < 250; i++)
    many = addSheet(many, sheet(new Date(Date.UTC(2027, 0, 1 + i)).toISOString().slice(0, 10), 'rain'));
  expect(many).toHaveLength(200);
  expect(many[0]!.day > '2026-11-02').toBe(true);
  expect(parseSheets(JSON.parse(JSON.stringify(many)))).toEqual(many);
});

test('a value that is no list of sheets gives no sheets', () => {
  for (const value of [null, 7, {}, [3], [{ day: 'x' }], [null]]) expect(parseSheets(value)).toEqual([]);
});
