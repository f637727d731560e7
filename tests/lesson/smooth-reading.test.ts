import { readFileSync } from 'node:fs';
import nlp from 'compromise';
import { expect, test } from 'vitest';
import { cutPhrases } from '../../src/lesson/smooth-reading/cut-phrases.ts';
import { smoothReading } from '../../src/lesson/smooth-reading/smooth-reading.ts';
import { checkOddInputs, inputAt, makeOf, storm } from './check-sheet.ts';

/** Share of the breaks made that are ours by hand, and of those by hand that are made. */
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

/** How many words are before each break. */
function places(phrases: readonly string[]): Set<number> {
  let words = 0;
  return new Set(phrases.slice(0, -1).map((phrase) => (words += phrase.split(/\s+/).length)));
}

/** The chunks of a general library, as an outside measure (npm compromise). */
function chunks(sentence: string): string[] {
  const found = nlp(sentence).chunks().json() as { text: string }[];
  return found.map(({ text }) => text.trim()).filter((text) => text !== '');
}

test.each([
  ['phrases.txt', 0.88],
  ['phrases-held-back.txt', 0.76],
])('breaks are those made by hand in %s, nearer than a general tagger’s chunks', (file, least) => {
  const ours = measure(file, cutPhrases);
  expect(ours.precision).toBeGreaterThan(least);
  expect(ours.recall).toBeGreaterThan(least);
  const theirs = measure(file, chunks);
  expect(ours.precision).toBeGreaterThan(theirs.precision);
  expect(ours.recall).toBeGreaterThan(theirs.recall);
});

test('phrases are made for any group and any passage', () => checkOddInputs(smoothReading));

test('sentences with a word not yet taught are on the key alone, and the words of the others are counted up', () => {
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

test('without a passage there are sentences of words the group knows; before it knows any, the adult is told', () => {
  const [made] = makeOf(smoothReading, inputAt('steady-steps', 30), 1).blocks;
  expect(made!.rows).toHaveLength(6);
  expect(made!.note).toMatch(/^Made of words the group can read/);
  const early = makeOf(smoothReading, inputAt('steady-steps', 1), 1);
  expect(early).toMatchObject({ blocks: [], says: expect.stringMatching(/too few words/) });
});
