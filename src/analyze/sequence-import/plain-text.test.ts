import { expect, test } from 'vitest';
import { plainText } from './plain-text.ts';

test('cells of a copied web table are separated by tabs and its rows by line ends', () => {
  const pasted =
    '<table>\n<tr><th>Week</th>\n<th>Phonics</th></tr>\n<tr><td>1</td><td><b>sh</b> &amp; ch</td></tr></table>';
  expect(plainText(pasted).trim().split(/\n+/)).toEqual(['Week\tPhonics', '1\tsh & ch']);
});

test('letters between angle brackets are not tags', () => {
  expect(plainText('<a>, <i>, <u> and <b>')).toBe('<a>, <i>, <u> and <b>');
});

test.each([
  ['Week 1 &ndash; sh', 'Week 1 – sh'],
  ['&#257;&#x12B;', 'āī'],
  ['sh &unknown; ch', 'sh &unknown; ch'],
  ['sh\u00a0ch\r\nth', 'sh ch\nth'],
])('“%s” is read as “%s”', (pasted, text) => {
  expect(plainText(pasted)).toBe(text);
});
