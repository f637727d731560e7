import { readFileSync } from 'node:fs';
import nlp from 'compromise';
import { expect, test } from 'vitest';
import { cutPhrases } from '../../src/lesson/smooth-reading/cut-phrases.ts';
import { smoothReading } from '../../src/lesson/smooth-reading/smooth-reading.ts';
import { checkOddInputs, inputAt, makeOf, storm } from './check-sheet.ts';

/**
 * Returns the precision and the recall of our breaks. The precision is the share of our breaks that were also made by
 * hand. The recall is the share of the breaks by hand that we made.
 */
function measure(file: string, cut: (sentence: string) => readonly string[]) {
  const lines = readFileSync(new URL(file, import.meta.url), 'utf8').split('\n');
  let [both, made, byHand] = [0, 0, 0];
  for (const line of lines.filter((each) => each !== '' && !each.startsWith('#'))) {
    const wanted = places(line.split(' | '));
    const found = places(cut(line.replaceAll(' | ', ' ')));
    both += [...found].filter((place) => wanted.has(place)).length;
    made += found.size;
    byHand += wanted.size;
  }
  return { precision: both / made, recall: both / byHand };
}

/** Returns for each break the number of words before it. */
function places(phrases: readonly string[]): Set<number> {
  let words = 0;
  return new Set(phrases.slice(0, -1).map((phrase) => (words += phrase.split(/\s+/).length)));
}

/** Splits a sentence into the chunks of a general library, as an outside measure (npm compromise). */
function chunks(sentence: string): string[] {
  const found = nlp(sentence).chunks().json() as { text: string }[];
  return found.map(({ text }) => text.trim()).filter((text) => text !== '');
}

test.each([
  ['phrases.txt', 0.88],
  ['phrases-held-back.txt', 0.76],
])(
  'phrase breaks match the breaks made by hand in %s, better than a general tagger’s chunks',
  (file, least) => {
    const ours = measure(file, cutPhrases);
    expect(ours.precision).toBeGreaterThan(least);
    expect(ours.recall).toBeGreaterThan(least);
    const theirs = measure(file, chunks);
    expect(ours.precision).toBeGreaterThan(theirs.precision);
    expect(ours.recall).toBeGreaterThan(theirs.recall);
  },
);

test('phrases are made for any group and any passage', () => checkOddInputs(smoothReading));

test('sentences with an untaught word are only on the key, and all others have their number of words', () => {
  const { blocks } = makeOf(smoothReading, { ...inputAt('steady-steps', 30), passage: storm }, 5, {
    count: '12',
  });
  const [first, second] = blocks;
  expect([first!.id, second!.id]).toEqual(['phrases', 'not-yet']);
  expect(second!.columns[0]!.shows).toBe('key');
  const rows = first!.rows;
  expect(rows.length).toBeGreaterThan(1);
  let total = 0;
  for (const [inPhrases, plain, words, soFar] of rows) {
    expect(inPhrases!.replaceAll('  |  ', ' ')).toBe(plain);
    expect(Number(words)).toBe(plain!.split(' ').length);
    total += Number(words);
    expect(Number(soFar)).toBe(total);
  }
});

test('without a passage, a group gets sentences of known words, or the adult gets a note', () => {
  const [made] = makeOf(smoothReading, inputAt('steady-steps', 30), 1).blocks;
  expect(made!.rows).toHaveLength(6);
  expect(made!.note).toMatch(/^Made of words the group can read/);
  const early = makeOf(smoothReading, inputAt('steady-steps', 1), 1);
  expect(early).toMatchObject({ blocks: [], says: expect.stringMatching(/too few words/) });
});
