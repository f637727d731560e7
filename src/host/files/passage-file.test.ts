import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PassageFileError, readPassages } from './passage-file.ts';

const text = fc.string({ maxLength: 20, size: 'max' });
const orNull = fc.option(text, { nil: null });
const passage = fc.record({
  title: text,
  source: fc.record({ url: orNull, byline: orNull, date: orNull }),
  original: text,
  versions: fc.dictionary(
    fc.stringMatching(/^[a-z-]{1,8}$/),
    fc.record({ text, storyWords: fc.array(fc.record({ word: text, meaning: text }), { maxLength: 3 }) }),
    { noNullPrototype: true },
  ),
});

test('a passage file of each earlier version is read', () => {
  fc.assert(
    fc.property(fc.array(passage, { maxLength: 4 }), (passages) => {
      expect(readPassages(JSON.stringify({ 'wordreach-passages': 1, passages }))).toEqual(passages);
    }),
    { seed: 20261125 },
  );
});

test.each([
  ['', /holds no passages/],
  ['<p>A lighthouse', /holds no passages/],
  ['{"passages": []}', /holds no passages/],
  ['{"wordreach-passages": 2, "passages": []}', /later version/],
  ['{"wordreach-passages": 1, "passages": [{"title": 1}]}', /Passage 1 .* damaged/],
  [
    '{"wordreach-passages": 1, "passages": [{"title": "a", "original": "b", "versions": {"h": {"text": "x"}}}]}',
    /damaged/,
  ],
])('%j is refused as a passage file with an error sentence', (file, says) => {
  expect(() => readPassages(file)).toThrow(PassageFileError);
  expect(() => readPassages(file)).toThrow(says);
});

test('any text is read as passages or refused with a PassageFileError', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.json()), (file) => {
      try {
        readPassages(file);
      } catch (error) {
        expect(error).toBeInstanceOf(PassageFileError);
      }
    }),
    { seed: 20261125 },
  );
});
