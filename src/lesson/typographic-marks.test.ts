import { expect, test } from 'vitest';
import { typographic } from './typographic-marks.ts';

test.each([
  ["Bram didn't stop.", 'Bram didn’t stop.'],
  ['the pupils’ nets', 'the pupils’ nets'],
  ['"Row!" said Mr. Falk. "Don\'t stop."', '“Row!” said Mr. Falk. “Don’t stop.”'],
  ['He said: "The card says \'net\'."', 'He said: “The card says ‘net’.”'],
  ['6\' 2"', '6\' 2"'],
  ['', ''],
])('%s becomes %s', (before, after) => {
  expect(typographic(before)).toBe(after);
  expect(typographic(after)).toBe(after);
});
