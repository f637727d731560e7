import { describe, expect, test } from 'vitest';
import { loadAnalyzer } from '../../../tests/load-analyzer.ts';
import { AMERICAN } from './speech.ts';

const american = loadAnalyzer();
const british = american.speaking({ accent: 'british', bath: 'father' });
const northern = american.speaking({ accent: 'british', bath: 'cat' });

function unitsOf(word: string, analyzer = british): string {
  return analyzer
    .analyze(word)
    .readings[0]!.units.map(({ letters, sound }) => `${letters}:${sound}`)
    .join(' ');
}

describe('a British r is heard only before a vowel, within a word and where a word meets an ending', () => {
  test.each([
    ['car', 'c:K ar:AR'],
    ['fork', 'f:F or:OR k:K'],
    ['sister', 's:S i:IH s:S t:T er:AX'],
    ['her', 'h:HH er:ER'],
    ['chair', 'ch:CH air:EA'],
    ['deer', 'd:D eer:IA'],
    ['cure', 'c:K ure:Y.UA'],
    ['fire', 'f:F ire:AYA'],
    ['starry', 's:S t:T arr:AR.R y:IY'],
    ['caring', 'c:K ar:EA.R ing:IH.NG'],
    ['cared', 'c:K ar:EA ed:D'],
    ['forever', 'f:F or:OR.R e:EH v:V er:AX'],
    ['overact', 'over:OW.V.AX.R a:AE c:K t:T'],
    ['irregular', 'ir:IH.R r:- e:EH g:G u:Y.AX l:L ar:AX'],
    ["aren't", "are:AR n't:N.T"],
    ["they're", "th:DH ey:EA 're:-"],
  ])('%s is spelled and pronounced %s', (word, units) => expect(unitsOf(word)).toBe(units));
});

describe('the patterns a word requires follow its British pronunciation', () => {
  test.each([
    ['carry', 'short-a', 'a-air'],
    ['very', 'short-e', 'a-air'],
    ['orange', 'short-o', 'or'],
    ['hurry', 'short-u', 'ur'],
    ['worry', 'o-short-u', 'or-er'],
    ['dog', 'short-o', 'o-aw'],
    ['long', 'short-o', 'o-aw'],
    ['wash', 'a-after-w', 'a-ah'],
    ['bath', 'a-ah', 'short-a'],
    ['tune', 'u_e-yoo', 'u_e-oo'],
    ['due', 'ue-yoo', 'ue-oo'],
    ['new', 'ew-yoo', 'ew-oo'],
    ['secretary', 'schwa-a', 'a-air'],
    ['fragile', 'i_e', 'i_e-weak'],
    ['tomato', 'a-ah', 'long-a'],
    ['aunt', 'irregular', 'au'],
  ])('%s requires %s and not %s', (word, needed, other) => {
    const { requires } = british.analyze(word).readings[0]!;
    expect(requires).toContain(needed);
    expect(requires).not.toContain(other);
  });

  test('a word requires the same patterns in both accents if British only drops the r', () => {
    for (const word of [
      'star',
      'fork',
      'fern',
      'bird',
      'surf',
      'chair',
      'pier',
      'shore',
      'doctor',
      'picture',
    ])
      expect(british.analyze(word).readings[0]!.requires, word).toEqual(
        american.analyze(word).readings[0]!.requires,
      );
  });
});

test('bath and grass have the a of cat in a group with the northern option', () => {
  for (const word of ['bath', 'grass', 'half', 'dance', 'bathtub', 'glassy'])
    expect(northern.analyze(word).readings[0]!.requires, word).toEqual(
      american.analyze(word).readings[0]!.requires,
    );
  expect(unitsOf('aunt', northern)).toBe('au:AE n:N t:T');
  expect(unitsOf('car', northern)).toBe('c:K ar:AR');
});

test('words missing from the table are read as in American and pronounced by the British rules', () => {
  expect(unitsOf('snarb')).toBe('s:S n:N ar:AR b:B');
  expect(unitsOf('dragonbath')).toMatch(/b:B a:AR th:TH$/);
  for (const word of ['glorpster', 'smeech', 'quaynote', "Mariglow's", 'blorfing']) {
    const [ours] = british.analyze(word).readings;
    const [theirs] = american.analyze(word).readings;
    expect(ours!.source, word).toBe(theirs!.source);
    expect(ours!.syllables, word).toEqual(theirs!.syllables);
  }
});

test('each accent has one analyser, and every analyser can return the analysers of the other accents', () => {
  expect(british.speaking({ accent: 'british', bath: 'father' })).toBe(british);
  expect(british.speaking(AMERICAN)).toBe(american.speaking(AMERICAN));
  expect(northern).not.toBe(british);
  expect(unitsOf('car', british.speaking(AMERICAN))).toBe('c:K ar:AA.R');
});

test('the units of a British reading contain all letters of the word', () => {
  for (const word of ['orange', 'courage', 'squirrel', 'schedule', 'lieutenant', 'plantation', 'water']) {
    const [reading] = british.analyze(word).readings;
    expect(reading!.units.map(({ letters }) => letters.replace('_', '')).join('').length, word).toBe(
      word.length,
    );
  }
});
