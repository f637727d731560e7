import { expect, test } from 'vitest';
import { wrapLines } from './wrap-lines.ts';

test.each([
  ['a b c', 80, 'a b c'],
  ['ab cd ef', 5, 'ab cd\nef'],
  ['lighthouse b', 4, 'lighthouse\nb'],
  ['', 4, ''],
])('%j is wrapped to %i characters', (text, width, expected) => {
  expect(wrapLines(text.split(' '), width)).toBe(expected);
});

test('the first line and the other lines begin with their prefixes and keep the width', () => {
  expect(wrapLines(['sail', 'rope', 'mast'], 12, 'at sea: ', '  ')).toBe('at sea: sail\n  rope mast');
});
