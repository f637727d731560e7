// @vitest-environment happy-dom
import { expect, test } from 'vitest';
import { countWrittenWords } from './count-written-words.ts';

// Nothing is hidden in these tests, and happy-dom cannot compute visibility.
Element.prototype.checkVisibility = () => true;

test.each([
  ['plain text', '<p>Bram saw a net.', 0],
  ['a text field', '<textarea>Bram saw a net.</textarea>', 4],
  ['a line to write in', '<input value="a net"><input type="search" value="gulls">', 3],
  ['a button and a date', '<input type="button" value="Go on"><input type="date" value="2026-11-30">', 0],
  ['an editable part', '<div contenteditable>Bram saw <b>a net</b>.</div>', 4],
  ['an editable part in another', '<div contenteditable>Bram <p contenteditable>saw.</p></div>', 2],
  ['a part that may not be edited', '<div contenteditable="false">Bram saw a net.</div>', 0],
])('counts the words that the reader writes in %s', (_what, html, words) => {
  document.body.innerHTML = html;
  expect(countWrittenWords(document)).toBe(words);
});

test('counts all words of a page in design mode as written', () => {
  document.body.innerHTML = '<p>Bram saw a net.';
  Object.assign(document, { designMode: 'on' });
  expect(countWrittenWords(document)).toBe(4);
  Object.assign(document, { designMode: 'off' });
  expect(countWrittenWords(document)).toBe(0);
});
