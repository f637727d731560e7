import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readGold, scoreGold } from './accuracy/score-gold.ts';
import { loadAnalyzer } from './load-analyzer.ts';

// gold-words: 187 words of all kinds, annotated by hand apart from the engine (units, base and affixes, syllables).
// gold-own: 626 words by kind, drafted with the engine's help, then read and corrected line by line.
describe.each(['gold-words.tsv', 'gold-own.tsv'])('hand-made annotations, %s', (file) => {
  const rows = readGold(readFileSync(new URL(`words/${file}`, import.meta.url), 'utf8'));
  const { wrong } = scoreGold(rows, loadAnalyzer());

  // Exact, since a share would let a broken rule pass that few of the words need.
  test.each([
    ['units', wrong.units],
    ['base, affixes and changes', wrong.morph],
    ['division into syllables', wrong.division],
    ['types of syllables', wrong.types],
  ])('%s are those annotated', (_, errors) => {
    expect(rows.length).toBeGreaterThan(150);
    expect(errors).toEqual([]);
  });
});
