import { expect, test } from 'vitest';
import { findRows } from './find-rows.ts';

test.each([
  ['tabs', 'Week\tSounds\n1\tsh\n2\tch'],
  ['bars', 'Week | Sounds\n1 | sh\n2 | ch'],
  ['bars and a rule, as in Markdown', '| Week | Sounds |\n|---|:--:|\n| 1 | sh |\n| 2 | ch |'],
  ['commas', 'Week,Sounds\n1,sh\n2,ch'],
  ['wide gaps', 'Week   Sounds\n1      sh\n2      ch'],
  ['one cell a line', 'Week\nSounds\n1\nsh\n2\nch'],
])('a table is found if its cells are separated by %s', (_, text) => {
  expect(findRows(text)?.rows.map((row) => [...row])).toEqual([
    ['Week', 'Sounds'],
    ['1', 'sh'],
    ['2', 'ch'],
  ]);
});

test('a list with bars in only two of its lines is not a table', () => {
  expect(findRows('Week 1\nsh | ch\nWeek 2\nth\nWeek 3\nng | nk\nWeek 4\nai')).toBeNull();
});
