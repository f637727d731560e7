import { describe, expect, test } from 'vitest';
import { dropRunningHeads } from './drop-running-heads.ts';
import { findPdfLines } from './pdf-lines.ts';
import { findPdfParagraphs } from './pdf-paragraphs.ts';
import type { PdfLine } from './pdf-text.ts';

const isWord = (word: string) => ['lantern', 'harbour', 'well', 'known'].includes(word);

type Drawn = readonly [text: string, x: number, y: number, size?: number, page?: number];

/** Creates lines of ten points. Each line is as wide as its text, with five points a letter. */
function lines(...texts: readonly Drawn[]): PdfLine[] {
  return texts.map(([text, x, y, size = 10, page = 0]) => ({
    text,
    x,
    right: x + text.length * 5,
    y,
    size,
    page,
    spans: [],
  }));
}

const found = (...texts: readonly Drawn[]) =>
  findPdfParagraphs(lines(...texts), isWord).map(({ text }) => text);

describe('lines become paragraphs', () => {
  test('a hyphen at a line’s end is removed where it divides a word, and kept where it does not', () => {
    expect(
      found(['Bram sat with his lan-', 40, 100], ['tern on the old well-', 40, 88], ['known wall.', 40, 76]),
    ).toEqual(['Bram sat with his lantern on the old well-known wall.']);
    expect(found(['Bram went to the har\u00ad', 40, 100], ['bour wall.', 40, 88])).toEqual([
      'Bram went to the harbour wall.',
    ]);
  });

  test('an indent, a wider gap and a short last line each begin a new paragraph', () => {
    const first = 'Bram sat on the wall and';
    expect(
      found([first, 40, 100], ['let it rain on him all.', 40, 88], ['Then he went to bed.', 54, 76]),
    ).toHaveLength(2);
    expect(
      found([first, 40, 100], ['let it rain on him all.', 40, 88], ['Then he went to bed.', 40, 66]),
    ).toHaveLength(2);
    expect(
      found([first, 40, 100], ['let it rain.', 40, 88], ['Then he went to his bed.', 40, 76]),
    ).toHaveLength(2);
    expect(
      found([first, 40, 100], ['let it rain on him all,', 40, 88], ['then he went to bed.', 40, 76]),
    ).toHaveLength(1);
  });

  test('verse keeps its lines', () => {
    const verse = ['The bell on the wall', 'rang once', 'and once for us all who sat'];
    expect(found(...verse.map((line, n) => [line, 40, 100 - n * 12] as const))).toEqual(verse);
  });

  test('a paragraph continues over the end of a page', () => {
    expect(
      found(['Bram sat on the wall and', 40, 30], ['let it rain on him all.', 40, 180, 10, 1]),
    ).toHaveLength(1);
  });

  test('lines in larger letters become headings, with levels by their sizes', () => {
    const kinds = findPdfParagraphs(
      lines(
        ['The Bell', 40, 200, 20],
        ['Night', 40, 170, 14],
        ['Bram sat on the wall and', 40, 150],
        ['let it rain.', 40, 138],
      ),
      isWord,
    );
    expect(kinds.map(({ kind, level }) => `${kind} ${level}`)).toEqual([
      'heading 1',
      'heading 2',
      'paragraph 0',
    ]);
  });
});

test('pieces become lines: gaps become spaces, raised marks are left out, and columns are separated', () => {
  const piece = (text: string, x: number, y: number, size = 10) => ({
    text,
    x,
    y,
    width: text.length * 5,
    size,
  });
  const drawn = [
    piece('The fer', 0, 100),
    piece('ry', 35, 100),
    piece('left', 48, 100),
    piece('3', 68, 104, 6),
    piece('late', 300, 100),
  ];
  expect(findPdfLines(drawn, 0).map(({ text }) => text)).toEqual(['The ferry left', 'late']);
});

test('rows across two columns are read column by column, but table cells or only two rows are not', () => {
  const read = (rows: readonly (readonly [string, string])[]) =>
    findPdfLines(
      rows.flatMap(([left, right], n) =>
        [left, right].map((text, column) => ({
          text,
          x: 20 + column * 160,
          y: 200 - n * 12,
          width: text.length * 5,
          size: 10,
        })),
      ),
      0,
    ).map(({ text }) => text);
  const prose = [
    ['Bram sat on the wall and', 'Wilma ran to the quay and'],
    ['let the rain hit his hat,', 'rang the bell six times so'],
    ['and the ferry did not come', 'that all of the crew could'],
    ['until the mist had lifted.', 'find the gap in the wall.'],
  ] as const;
  expect(read(prose)).toEqual([...prose.map(([left]) => left), ...prose.map(([, right]) => right)]);
  expect(read(prose.slice(0, 2))).toEqual(prose.slice(0, 2).flat());
  const table = ['ten', 'six', 'two', 'one', 'nine'].map((hour) => ['The Marigold leaves', hour] as const);
  expect(read(table)).toEqual(table.flat());
});

test('running heads and page numbers are left out, and a title that comes once is kept', () => {
  const page = (n: number) =>
    lines(
      [`Tarn Quay Post ${n}`, 40, 190],
      [n === 1 ? 'The Bell' : 'He sat.', 40, 130 + n * 9],
      ['He ran.', 40, 90 + n * 9],
      [`- ${n} -`, 90, 10],
    );
  expect(
    dropRunningHeads([page(1), page(2), page(3)])
      .flat()
      .map(({ text }) => text),
  ).toEqual(['The Bell', 'He ran.', 'He sat.', 'He ran.', 'He sat.', 'He ran.']);
});
