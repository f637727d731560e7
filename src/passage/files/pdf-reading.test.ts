import { expect, test } from 'vitest';
import { dropContents } from './drop-contents.ts';
import { mendSeams } from './find-pdf-text.ts';
import type { PdfLine } from './pdf-text.ts';
import { readPdfPicture } from './read-pdf-picture.ts';

const WORDS = new Set(['friend', 'the', 'end', 'net', 'work', 'network']);

function line(text: string, y = 100, x = 0, spans: readonly string[] = [text]): PdfLine {
  const width = text.length * 5;
  return {
    text,
    x,
    right: x + width,
    y,
    size: 10,
    page: 0,
    spans: spans.map((part) => ({ text: part, x, width: part.length * 5, family: 'serif' })),
  };
}

test.each([
  [['my fri', ' end'], 'my friend'],
  [['the', ' end'], 'the end'],
  [['net', ' work'], 'net work'],
  [['fri', ' ghost'], 'fri ghost'],
])('the pieces %j are read as "%s"', (spans, says) => {
  const mended = mendSeams(line(spans.join(''), 100, 0, spans), (word) => WORDS.has(word));
  expect(mended.text).toBe(says);
  expect(mended.spans.map(({ text }) => text).join('')).toBe(says);
});

test('a list of contents is removed with the numbers beside its entries, and prose with numbers is kept', () => {
  const page = [
    line('Contents', 200),
    line('The Bell', 180),
    line('3', 180, 300),
    line('A cow who came to town and', 160),
    line('would not go ..... 12', 148),
    line('The bell rang at six.', 80),
  ];
  expect(dropContents([page])[0]!.map(({ text }) => text)).toEqual(['The bell rang at six.']);
  const prose = [line('Contents', 200), line('Six nets and a lamp.', 180), line('Two of them are old.', 160)];
  expect(dropContents([prose])[0]).toEqual(prose);
});

test('the words read in a picture have their places on the page, and unsure words are marked', () => {
  const word = (text: string, left: number, isSure: boolean) => ({
    text,
    box: { left, top: 100, right: left + 60, bottom: 130 },
    sureness: isSure ? 1 : 0.3,
    isSure,
  });
  const reading = {
    width: 800,
    height: 1000,
    lines: [
      {
        words: [word('old', 100, true), word('nefs', 180, false)],
        box: { left: 100, top: 100, right: 240, bottom: 130 },
        size: 30,
        beginsParagraph: true,
      },
    ],
  };
  const page = readPdfPicture({ width: 400, height: 500, turn: 0, lines: [] }, 2, reading, 2);
  expect(page.lines).toMatchObject([{ text: 'old nefs', x: 50, right: 120, y: 438, size: 15, page: 2 }]);
  expect(page.lines[0]!.spans).toMatchObject([
    { text: 'old ', x: 50, width: 30, isUnsure: false },
    { text: 'nefs', x: 90, width: 30, isUnsure: true },
  ]);
});
