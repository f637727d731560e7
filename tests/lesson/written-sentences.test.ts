import { expect, test } from 'vitest';
import { readUnfitWords } from '../../src/data/read-unfit-words.ts';
import { readWordList } from '../../src/data/read-word-list.ts';
import written from '../../src/lesson/sentences/written-sentences.json' with { type: 'json' };
import { inVariety, isForeign } from '../../src/variety/index.ts';
import { lessonInput, sequences } from './load-lesson.ts';

const sentences = Object.values(written.sentences).flat();
const wordsOf = (sentence: string): string[] => sentence.slice(0, -1).toLowerCase().split(' ');

test('a written sentence has four to eleven words, is a statement or a question, and comes only once', () => {
  expect(sentences.length).toBeGreaterThan(2000);
  for (const sentence of sentences) {
    expect(sentence).toMatch(/^[A-Z][A-Za-z' -]*[A-Za-z'][.?]$/);
    expect(wordsOf(sentence).length, sentence).toBeGreaterThanOrEqual(4);
    expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(11);
  }
  expect(new Set(sentences.map((sentence) => sentence.toLowerCase())).size).toBe(sentences.length);
});

test('a written sentence is the same in American and in British English', () => {
  const parted = sentences.filter(
    (sentence) =>
      inVariety(sentence, 'american') !== sentence ||
      inVariety(sentence, 'british') !== sentence ||
      wordsOf(sentence).some((word) => isForeign(word, 'american') || isForeign(word, 'british')),
  );
  expect(parted).toEqual([]);
});

// Outside sources: npm naughty-words and profane-words.
test('no written sentence has a coarse word, an insult, or a word kept off sheets', () => {
  const harmless = readWordList('more-lesson-words.txt');
  const banned = new Set([
    ...[...readUnfitWords()].filter((word) => !harmless.has(word)),
    ...readWordList('not-in-lessons.txt'),
  ]);
  expect(sentences.filter((each) => wordsOf(each).some((word) => banned.has(word)))).toEqual([]);
});

test.each(sequences)(
  'a group at the last step of $id reads nine in ten written sentences',
  ({ id, steps }) => {
    const { known } = lessonInput(id, steps.length);
    const read = sentences.filter((sentence) => known.reads(sentence));
    expect(read.length / sentences.length).toBeGreaterThan(0.9);
  },
);
