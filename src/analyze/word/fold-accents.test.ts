import { expect, test } from 'vitest';
import { loadAnalyzer } from '../../../tests/load-analyzer.ts';
import { foldAccents } from './fold-accents.ts';

const analyzer = loadAnalyzer();

test.each([
  ['naïve', 'naive'],
  ['coöperate', 'cooperate'],
  ['piñata', 'pinata'],
  ['straße', 'straße'],
  ['λόγος', 'λόγος'],
  ['œuvre', 'œuvre'],
])('%s is %s without its marks', (word, plain) => expect(foldAccents(word)).toBe(plain));

test.each(['naïve', 'café', 'cafés', 'coöperate', 'façade', "café's"])(
  '%s is read like its plain form',
  (word) => {
    const [reading] = analyzer.analyze(word).readings;
    const [plain] = analyzer.analyze(foldAccents(word)).readings;
    expect(reading!.source).toBe(plain!.source);
    expect(/dictionary|derived/.test(reading!.source)).toBe(true);
    expect(reading!.requires).toEqual(plain!.requires);
    expect(reading!.syllables.map(({ text }) => text).join('')).toBe(word);
  },
);

test.each(['piñata', 'jalapeño', 'José', 'rosé'])('%s is read, but not as a fact', (word) => {
  const { readings } = analyzer.analyze(word);
  expect(readings.map(({ source }) => source).filter((source) => /dictionary|derived/.test(source))).toEqual(
    word === 'José' ? ['dictionary'] : [],
  );
  expect(readings[0]!.requires).not.toEqual([]);
});

test('résumé is read as the noun that ends in the sound EY, and not as the verb resume', () => {
  const { readings } = analyzer.analyze('résumé');
  const facts = readings.filter(({ source }) => source === 'dictionary');
  expect(facts.map(({ pronunciation }) => pronunciation.split(' ').at(-1))).toEqual(['EY']);
});
