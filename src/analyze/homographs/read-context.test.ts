import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutContext } from './cut-context.ts';
import { readContext } from './read-context.ts';

/** Returns the pieces around the word between asterisks. */
function around(marked: string): string {
  const [before = '', word = '', after = ''] = marked.split('*');
  const context = readContext(before + word + after, before.length, before.length + word.length);
  return [...context.before, '_', ...context.after].join(' ');
}

test.each([
  ['She *read* the note.', 'She _ the note .'],
  ['He left. She *read*, then slept. Then she woke.', 'She _ , then slept .'],
  ['Last night Mr. Falk *read* to us', 'Last night Mr. Falk _ to us'],
  ["They’ll *read* Otto's well-kept log!", "They'll _ Otto's well-kept log !"],
  ['A heading\n\n*Read* this\n\nAnd that', '_ this \n\n'],
  ['*Read*', '_'],
  ['', '_'],
])('readContext finds the pieces around the marked word in %j', (marked, expected) => {
  expect(around(marked)).toBe(expected);
});

test('a context that is cut off begins with a whole word', () => {
  expect(around(`${'harbour '.repeat(40)}*read*`)).toMatch(/^(harbour )+_$/);
});

test('a word has the same context in a cut text as in the whole text', () => {
  const piece = fc.constantFrom(
    'the ',
    'tide ',
    'read',
    ' ',
    '. ',
    '“Otto’s ',
    '\n\n',
    'harbour',
    'Mr. ',
    '12.5 ',
    'quay-side ',
  );
  const text = fc.array(piece, { minLength: 1, maxLength: 90, size: 'max' }).map((pieces) => pieces.join(''));
  fc.assert(
    fc.property(text, fc.nat(), fc.nat({ max: 9 }), (whole, at, length) => {
      const start = at % whole.length;
      const end = Math.min(start + length, whole.length);
      const cut = cutContext(whole, start, end);
      expect(cut.text.slice(cut.start, cut.end)).toBe(whole.slice(start, end));
      expect(readContext(cut.text, cut.start, cut.end)).toEqual(readContext(whole, start, end));
    }),
    { seed: 7, numRuns: 500 },
  );
});
