import { describe, expect, test } from 'vitest';
import { findSentences } from './find-sentences.ts';

const cut = (text: string): string[] =>
  findSentences(text).map(({ start, end }) => text.slice(start, end).trim());

describe('sentences', () => {
  test.each([
    ['We met Mr. Falk. He waved.', ['We met Mr. Falk.', 'He waved.']],
    ['Mrs. Falk and Dr. Ortega sailed. It blew!', ['Mrs. Falk and Dr. Ortega sailed.', 'It blew!']],
    ['“Row!” said Mr. Falk. “Now?” asked Ines.', ['“Row!” said Mr. Falk.', '“Now?” asked Ines.']],
    ['See vol. 2 for it. Then rest.', ['See vol. 2 for it.', 'Then rest.']],
    ['J. R. Falk and Bram B. Falk row. They rest.', ['J. R. Falk and Bram B. Falk row.', 'They rest.']],
    ['The U.S. Navy came. It left.', ['The U.S. Navy came.', 'It left.']],
    ['So did I. Then we ran.', ['So did I.', 'Then we ran.']],
    ['He sat. She ran.', ['He sat.', 'She ran.']],
    ['Nets, ropes, etc. Then we ran.', ['Nets, ropes, etc.', 'Then we ran.']],
    ['He was ill. Mr. Falk came', ['He was ill.', 'Mr. Falk came']],
    ['', []],
  ])('%j is cut into its sentences', (text, expected) => expect(cut(text)).toEqual(expected));

  test('sentences joined end to end make up the whole text', () => {
    const text = ' Mr. Falk rows.\n\nDr.\nIt rains…  ';
    const spans = findSentences(text);
    expect(spans.map(({ start, end }) => text.slice(start, end)).join('')).toBe(text);
  });
});
