import { expect, test } from 'vitest';
import { readContext } from './read-context.ts';

/** The pieces around the word between asterisks. */
function around(marked: string): string {
  const [before = '', word = '', after = ''] = marked.split('*');
  const context = readContext(before + word + after, before.length, before.length + word.length);
  return [...context.before, '_', ...context.after].join(' ');
}

test.each([
  ['She *read* the note.', 'She _ the note .'],
  ['He left. She *read*, then slept. Then she woke.', 'She _ , then slept .'],
  ['Last night Mr. Falk *read* to us', 'Last night Mr. Falk _ to us'],
  ["They’ll *read* Odd's well-kept log!", "They'll _ Odd's well-kept log !"],
  ['A heading\n\n*Read* this\n\nAnd that', '_ this \n\n'],
  ['*Read*', '_'],
  ['', '_'],
])('%j', (marked, expected) => {
  expect(around(marked)).toBe(expected);
});

test('the first word within reach is whole', () => {
  expect(around(`${'harbour '.repeat(40)}*read*`)).toMatch(/^(harbour )+_$/);
});
