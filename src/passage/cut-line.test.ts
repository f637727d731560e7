import { expect, test } from 'vitest';
import { cutLine } from './cut-line.ts';

test.each([
  ['The ferry left', ['The', 'ferry', 'left'], 0],
  ['## The ferry', ['The', 'ferry'], 0],
  ['- 12 nets', ['nets'], 1],
])('each word of %j has its place in the line', (line, words, skipped) => {
  const cut = cutLine(line);
  expect(cut.words.map(({ start, end }) => line.slice(start, end))).toEqual(words);
  expect(cut.skipped).toBe(skipped);
});
