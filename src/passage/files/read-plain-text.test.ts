import { expect, test } from 'vitest';
import { readPlainText } from './read-plain-text.ts';

test('headings and lists are written with the signs of a passage (# and -)', () => {
  expect(
    readPlainText('The Ferry\n=========\n\n#### Nets\n* one\n• two\n\n---\n\nWhat next\n---\nBed.'),
  ).toBe('# The Ferry\n### Nets\n- one\n- two\n## What next\nBed.');
});

test('a paragraph of 20,000 sentences is read unchanged as one line', () => {
  const paragraph = 'The tide came in. '.repeat(20_000).trim();
  expect(readPlainText(paragraph)).toBe(paragraph);
});
