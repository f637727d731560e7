import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WholeShelfText } from '../store/shelf-store.ts';
import { pickText, readShelfFile, ShelfFileError } from './shelf-file.ts';

// The lines of a shelf file, as earlier versions wrote them.
const writeHead = (texts: number): string => `${JSON.stringify({ 'wordreach-shelf': 1, texts })}\n`;
const writeText = (text: WholeShelfText): string => `${JSON.stringify(pickText(text))}\n`;

const ferry: WholeShelfText = {
  id: 'a1',
  title: 'The ferry is late',
  url: 'https://post.example/ferry',
  byline: null,
  date: '25 November 2026',
  shelved: 1_764_000_000_000,
  tags: ['harbour', 'week 12'],
  notes: 'Two lines\nof notes.',
  words: [
    ['ferry', 2],
    ["isn't", 1],
  ],
  skipped: 1,
  text: null,
};

async function read(...parts: string[]): Promise<WholeShelfText[]> {
  const found = [];
  for await (const text of readShelfFile(new Blob(parts))) found.push(text);
  return found;
}

test('any shelf comes back unchanged from its file', async () => {
  const text = fc.record<WholeShelfText>({
    id: fc.uuid(),
    title: fc.string({ unit: 'binary' }),
    url: fc.option(fc.webUrl()),
    byline: fc.option(fc.string()),
    date: fc.option(fc.string()),
    shelved: fc.nat(),
    tags: fc.array(fc.string()),
    notes: fc.string({ unit: 'grapheme' }),
    words: fc.uniqueArray(
      fc.tuple(fc.stringMatching(/^\S{1,12}$/u), fc.integer({ min: 1, max: 2 ** 31 - 1 })),
      {
        selector: ([key]) => key,
      },
    ),
    skipped: fc.nat(),
    text: fc.option(fc.string({ unit: 'grapheme' })),
  });
  await fc.assert(
    fc.asyncProperty(fc.array(text, { maxLength: 5 }), async (texts) => {
      expect(await read(writeHead(texts.length), ...texts.map(writeText))).toEqual(
        // A lone half of a surrogate pair cannot be stored in a UTF-8 file.
        JSON.parse(JSON.stringify(texts)),
      );
    }),
    { seed: 20261125, numRuns: 20 },
  );
});

describe('reading a damaged shelf file', () => {
  const line = writeText(ferry);
  const changed = (change: object) => `${JSON.stringify({ ...JSON.parse(line), ...change })}\n`;
  test.each<[string, string[], RegExp]>([
    ['an empty one', [''], /holds no shelf/],
    ['a picture', ['\u0089PNG'], /holds no shelf/],
    ['one of passages', ['{"wordreach-passages":1,"passages":[]}'], /holds no shelf/],
    ['one from later', ['{"wordreach-shelf":2,"texts":0}'], /later version.*Update/],
    ['one without a number of texts', ['{"wordreach-shelf":1}'], /holds no shelf/],
    ['one that was cut off', [writeHead(2), line], /has 1 of 2 texts.*Save it again/],
    ['one cut off within a text', [writeHead(1), line.slice(0, -20)], /Text 1 of this file is damaged/],
    ['a text without words', [writeHead(1), changed({ words: undefined })], /Text 1/],
    ['a count of no word', [writeHead(1), changed({ words: [['ferry', 0]] })], /Text 1/],
    ['half a word', [writeHead(1), changed({ words: [['ferry', 1.5]] })], /Text 1/],
    ['a key of two words', [writeHead(1), changed({ words: [['the ferry', 1]] })], /Text 1/],
    [
      'a word twice',
      [
        writeHead(2),
        line,
        changed({
          words: [
            ['a', 1],
            ['a', 1],
          ],
        }),
      ],
      /Text 2/,
    ],
    ['an id that is none', [writeHead(1), changed({ id: '../ferry' })], /Text 1/],
    ['an address that is none', [writeHead(1), changed({ url: 7 })], /Text 1/],
    ['tags that are none', [writeHead(1), changed({ tags: [7] })], /Text 1/],
  ])('refuses %s with a sentence that says what to do next', async (_, parts, says) => {
    await expect(read(...parts)).rejects.toThrow(ShelfFileError);
    await expect(read(...parts)).rejects.toThrow(says);
  });

  test('refuses random bytes after a valid first line with a ShelfFileError', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 200, size: 'max' }), async (bytes) => {
        const reading = (async () => {
          for await (const _ of readShelfFile(new Blob([writeHead(1), bytes as never])));
        })();
        await expect(reading).rejects.toThrow(ShelfFileError);
      }),
      { seed: 20261125 },
    );
  });
});
