import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readFrequency } from '../src/data/read-frequency.ts';
import { readBritfone, scoreBritish } from './accuracy/score-british.ts';
import { loadAnalyzer, loadLexicon } from './load-analyzer.ts';

/**
 * Outside source: half of Britfone 3.0.1 (J. Llarena, MIT), a dictionary of southern British English. It may be used
 * for measuring, but not shipped.
 * The rules were corrected by looking at this half, so the result for the other half is somewhat lower.
 */
const source = new URL('../../shared/data/britfone_dev.tsv', import.meta.url);

describe.skipIf(!existsSync(source))('British readings compared with Britfone', () => {
  test('agree for 97 in 100 common words and 94 in 100 of all, apart from stress and weak vowels', () => {
    const lexicon = loadLexicon();
    const { words, right, common, rightCommon } = scoreBritish(
      readBritfone(readFileSync(source, 'utf8')),
      loadAnalyzer().speaking({ accent: 'british', bath: 'father' }),
      (word) => lexicon.find(word) !== null,
      readFrequency(),
    );
    expect(words).toBeGreaterThan(7000);
    expect(common).toBe(5000);
    expect(rightCommon / common).toBeGreaterThan(0.97);
    expect(right / words).toBeGreaterThan(0.94);
  });

  test('American readings agree for less than 75 in 100 words', () => {
    const lexicon = loadLexicon();
    const theirs = readBritfone(readFileSync(source, 'utf8'));
    const { words, right } = scoreBritish(
      theirs,
      loadAnalyzer(),
      (word) => lexicon.find(word) !== null,
      new Map(),
    );
    expect(right / words).toBeLessThan(0.75);
  });
});
