import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readGold, scoreGold } from './accuracy/score-gold.ts';
import { loadAnalyzer } from './load-analyzer.ts';

// gold-words: 187 words of all kinds, annotated by hand apart from the engine (units, base and affixes, syllables).
// gold-own: 601 words by kind, drafted with the engine's help, then read and corrected line by line.
describe.each(['gold-words.tsv', 'gold-own.tsv'])('hand-made annotations, %s', (file) => {
  const rows = readGold(readFileSync(new URL(`words/${file}`, import.meta.url), 'utf8'));
  const { wrong } = scoreGold(rows, loadAnalyzer());
  const share = (errors: readonly string[]): number => 1 - errors.length / rows.length;

  test('units are exact in at least 98 of 100 words', () => {
    expect(share(wrong.units), wrong.units.join('\n')).toBeGreaterThanOrEqual(0.98);
  });

  test('base, affixes and changes are exact in at least 98 of 100 words', () => {
    expect(share(wrong.morph), wrong.morph.join('\n')).toBeGreaterThanOrEqual(0.98);
  });

  test('syllables are divided as annotated in at least 95 of 100 words', () => {
    expect(share(wrong.division), wrong.division.join('\n')).toBeGreaterThanOrEqual(0.95);
  });

  test('syllable types are those annotated in at least 95 of 100 words', () => {
    expect(share(wrong.types), wrong.types.join('\n')).toBeGreaterThanOrEqual(0.95);
  });
});
