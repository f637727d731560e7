import { syllable } from 'syllable';
import { expect, test } from 'vitest';
import { readFrequency } from '../src/data/read-frequency.ts';
import { loadAnalyzer } from './load-analyzer.ts';

// Outside source: npm `syllable` 5 (rules and a list of exceptions, independent of CMUdict).
test('the number of syllables is the same as in the package syllable for at least 95 of 100 common words', () => {
  const analyzer = loadAnalyzer();
  const common = [...readFrequency().keys()].slice(0, 10_000).filter((word) => /^[a-z]{2,}$/.test(word));
  const counted = common.flatMap((word) => {
    const { source, syllables } = analyzer.analyze(word).readings[0]!;
    return source === 'dictionary' ? [{ word, ours: syllables.length, theirs: syllable(word) }] : [];
  });
  const differ = counted.filter(({ ours, theirs }) => ours !== theirs);
  const list = differ.map(({ word, ours, theirs }) => `${word} ${ours} ${theirs}`).join('\n');
  expect(counted.length).toBeGreaterThan(9000);
  expect(1 - differ.length / counted.length, list).toBeGreaterThanOrEqual(0.95);
});
