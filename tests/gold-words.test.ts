import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readGold, scoreGold } from './accuracy/score-gold.ts';
import { loadAnalyzer } from './load-analyzer.ts';

// gold-words: 187 words of all kinds, annotated by hand, independently of the engine (units, base and affixes,
// syllables).
// gold-own: 626 words by kind, drafted with the engine's help, then read and corrected line by line.
describe.each(['gold-words.tsv', 'gold-own.tsv'])('the hand-made annotations in %s', (file) => {
  const rows = readGold(readFileSync(new URL(`words/${file}`, import.meta.url), 'utf8'));
  const { wrong } = scoreGold(rows, loadAnalyzer());

  // All words must be right, since a required share would hide a broken rule that only few of the words need.
  test.each([
    ['units', wrong.units],
    ['base, affixes and changes', wrong.morph],
    ['division into syllables', wrong.division],
    ['types of syllables', wrong.types],
  ])('agree with the engine: %s', (_, errors) => {
    expect(rows.length).toBeGreaterThan(150);
    expect(errors).toEqual([]);
  });
});

// gold-british: a third of the words of all files above, in British pronunciation. The units were drafted with the
// engine's help, then read and corrected line by line.
test('a third of the annotated words have the annotated British units', () => {
  const british = loadAnalyzer().speaking({ accent: 'british', bath: 'father' });
  const rows = readFileSync(new URL('words/gold-british.tsv', import.meta.url), 'utf8')
    .trimEnd()
    .split('\n')
    .slice(1)
    .map((line) => line.split('\t') as [word: string, units: string]);
  const wrong = rows.flatMap(([word, annotated]) => {
    const told = british
      .analyze(word)
      .readings.map(({ units }) => units.map(({ letters, sound }) => `${letters}:${sound}`).join(' '))
      .join(' / ');
    return told === annotated ? [] : [`${word}: ${told}, annotated ${annotated}`];
  });
  expect(rows.length).toBeGreaterThan(400);
  expect(wrong).toEqual([]);
});

// gold-hard-3: 200 words of difficult kinds, annotated independently of the engine. Several notations count as right.
// Two words are not right. The first vowel of umbrella is weak in gold-words.tsv and full in this file. The -ern of
// northern is not one of our endings.
test('at least 198 of 200 more difficult words are fully right', () => {
  const rows = readGold(readFileSync(new URL('words/gold-hard-3.tsv', import.meta.url), 'utf8'));
  const { wrong } = scoreGold(rows, loadAnalyzer());
  const words = new Set(
    Object.values(wrong)
      .flat()
      .map((told) => told.split(':')[0]),
  );
  expect(rows).toHaveLength(200);
  expect([...words].sort()).toEqual(['northern', 'umbrella']);
});
