import { describe, expect, test } from 'vitest';
import { findLines, type ReadBlock } from './find-lines.ts';

const bbox = { x0: 30, y0: 50, x1: 130, y1: 90 };
const line = (...words: (readonly [string, number])[]) => ({
  bbox,
  rowAttributes: { rowHeight: 40 },
  words: words.map(([text, confidence]) => ({ text, confidence, bbox })),
});
const block = (...paragraphs: ReturnType<typeof line>[][]): ReadBlock => ({
  bbox,
  paragraphs: paragraphs.map((lines) => ({ lines })),
});
const scaled = { width: 60, height: 45, scale: 2, margin: 10 };
const read = (...words: (readonly [string, number])[]) =>
  findLines([block([line(...words)])], scaled).lines[0]!.words;

describe('the text read in a picture', () => {
  test('has word boxes in the coordinates of the original picture, clipped to its edges', () => {
    const { lines } = findLines([block([line(['fog', 90])])], scaled);
    expect(lines[0]!.words[0]!.box).toEqual({ left: 10, top: 20, right: 60, bottom: 40 });
    expect(lines[0]!.size).toBe(20);
  });

  test('follows the order of the columns and marks the starts of paragraphs', () => {
    const column = (...names: string[]) => block(names.map((name) => line([name, 90])));
    const { lines } = findLines(
      [column('one', 'two'), block([line(['three', 90])], [line(['four', 90])])],
      scaled,
    );
    expect(lines.map(({ words, beginsParagraph }) => [words[0]!.text, beginsParagraph])).toEqual([
      ['one', true],
      ['two', false],
      ['three', true],
      ['four', true],
    ]);
  });

  test('marks each word as sure or unsure', () => {
    expect(read(['fog', 96], ['bcll', 31], ['sea', 120]).map(({ isSure }) => isSure)).toEqual([
      true,
      false,
      true,
    ]);
  });

  test('leaves out words and lines without visible characters', () => {
    expect(read([' ', 95], ['fog', 95])).toHaveLength(1);
    expect(findLines([block([line([' ', 95])])], scaled).lines).toEqual([]);
  });

  // Letters that OCR often confuses. Common practice, no source.
  test.each([
    ['|', 'I'],
    ['l', 'I'],
    ["|'m", "I'm"],
    ['“l', '“I'],
    ["l'll", "I'll"],
    ['|t', 'It'],
    ['lamp', 'lamp'],
    ['all', 'all'],
    ['a||b', 'a||b'],
    ['5|', '5|'],
  ])('corrects “%s” to “%s”', (given, text) => {
    expect(read([given, 90])[0]!.text).toBe(text);
  });
});
