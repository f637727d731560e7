import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readOwnMeanings } from './write-word-bank.ts';

test('each word has one short meaning without the word itself, and no word is unfit for lessons', () => {
  const own = [...readOwnMeanings()];
  expect(own.length).toBeGreaterThan(1900);
  expect(own.map(([word]) => word)).toEqual([...new Set(own.map(([word]) => word))].toSorted());
  const lists = readFileSync(new URL('../source/not-in-lessons.txt', import.meta.url), 'utf8').split('\n');
  const out = new Set(lists.filter((line) => !line.startsWith('#')).flatMap((line) => line.split(' ')));
  for (const [word, meaning] of own) {
    expect(meaning.length, word).toBeLessThanOrEqual(70);
    expect(meaning.match(/[a-z']+/gi), word).not.toContain(word);
    expect(out.has(word), word).toBe(false);
  }
});
